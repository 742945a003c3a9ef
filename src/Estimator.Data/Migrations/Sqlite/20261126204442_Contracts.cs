using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Estimator.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Contracts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "state",
                table: "revisions");

            migrationBuilder.CreateTable(
                name: "bid_events",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    revision = table.Column<int>(type: "INTEGER", nullable: false),
                    sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    on = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    to = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bid_events", x => new { x.company_id, x.job_id, x.revision, x.sequence });
                    table.ForeignKey(
                        name: "FK_bid_events_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "change_orders",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    from_revision = table.Column<int>(type: "INTEGER", nullable: false),
                    to_revision = table.Column<int>(type: "INTEGER", nullable: false),
                    price_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    days = table.Column<int>(type: "INTEGER", nullable: false),
                    reason = table.Column<string>(type: "TEXT", nullable: false),
                    event_count = table.Column<int>(type: "INTEGER", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_change_orders", x => new { x.company_id, x.job_id, x.number });
                    table.ForeignKey(
                        name: "FK_change_orders_revisions_company_id_job_id_from_revision",
                        columns: x => new { x.company_id, x.job_id, x.from_revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_change_orders_revisions_company_id_job_id_to_revision",
                        columns: x => new { x.company_id, x.job_id, x.to_revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "invoices",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    place = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    deposit_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    deposit_applied_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    retained_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    released_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    event_count = table.Column<int>(type: "INTEGER", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_invoices", x => new { x.company_id, x.number });
                    table.ForeignKey(
                        name: "FK_invoices_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "kept_documents",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    paper = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    file = table.Column<string>(type: "TEXT", nullable: false),
                    media_type = table.Column<string>(type: "TEXT", nullable: false),
                    bytes = table.Column<byte[]>(type: "BLOB", nullable: false),
                    sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_kept_documents", x => new { x.company_id, x.job_id, x.paper, x.number, x.file });
                    table.ForeignKey(
                        name: "FK_kept_documents_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "sent_bids",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    revision = table.Column<int>(type: "INTEGER", nullable: false),
                    deposit_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    retainage_percent_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    days_to_pay = table.Column<int>(type: "INTEGER", nullable: false),
                    late_charge_percent_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    valid_days = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sent_bids", x => new { x.company_id, x.job_id, x.revision });
                    table.ForeignKey(
                        name: "FK_sent_bids_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "change_order_events",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    on = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_change_order_events", x => new { x.company_id, x.job_id, x.number, x.sequence });
                    table.ForeignKey(
                        name: "FK_change_order_events_change_orders_company_id_job_id_number",
                        columns: x => new { x.company_id, x.job_id, x.number },
                        principalTable: "change_orders",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "change_order_lines",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    line = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    quantity_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    amount_e4 = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_change_order_lines", x => new { x.company_id, x.job_id, x.number, x.line });
                    table.ForeignKey(
                        name: "FK_change_order_lines_change_orders_company_id_job_id_number",
                        columns: x => new { x.company_id, x.job_id, x.number },
                        principalTable: "change_orders",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "invoice_events",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    on = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    amount_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_invoice_events", x => new { x.company_id, x.number, x.sequence });
                    table.ForeignKey(
                        name: "FK_invoice_events_invoices_company_id_number",
                        columns: x => new { x.company_id, x.number },
                        principalTable: "invoices",
                        principalColumns: new[] { "company_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "invoice_lines",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    line = table.Column<int>(type: "INTEGER", nullable: false),
                    line_id = table.Column<string>(type: "TEXT", nullable: false),
                    title = table.Column<string>(type: "TEXT", nullable: false),
                    value_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    before_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    now_e4 = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_invoice_lines", x => new { x.company_id, x.number, x.line });
                    table.ForeignKey(
                        name: "FK_invoice_lines_invoices_company_id_number",
                        columns: x => new { x.company_id, x.number },
                        principalTable: "invoices",
                        principalColumns: new[] { "company_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "sent_bid_lines",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    revision = table.Column<int>(type: "INTEGER", nullable: false),
                    line = table.Column<int>(type: "INTEGER", nullable: false),
                    line_id = table.Column<string>(type: "TEXT", nullable: false),
                    title = table.Column<string>(type: "TEXT", nullable: false),
                    value_e4 = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sent_bid_lines", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_sent_bid_lines_sent_bids_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "sent_bids",
                        principalColumns: new[] { "company_id", "job_id", "revision" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_change_orders_company_id_job_id_from_revision",
                table: "change_orders",
                columns: new[] { "company_id", "job_id", "from_revision" });

            migrationBuilder.CreateIndex(
                name: "IX_change_orders_company_id_job_id_to_revision",
                table: "change_orders",
                columns: new[] { "company_id", "job_id", "to_revision" });

            migrationBuilder.CreateIndex(
                name: "IX_invoices_company_id_job_id_place",
                table: "invoices",
                columns: new[] { "company_id", "job_id", "place" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "bid_events");

            migrationBuilder.DropTable(
                name: "change_order_events");

            migrationBuilder.DropTable(
                name: "change_order_lines");

            migrationBuilder.DropTable(
                name: "invoice_events");

            migrationBuilder.DropTable(
                name: "invoice_lines");

            migrationBuilder.DropTable(
                name: "kept_documents");

            migrationBuilder.DropTable(
                name: "sent_bid_lines");

            migrationBuilder.DropTable(
                name: "change_orders");

            migrationBuilder.DropTable(
                name: "invoices");

            migrationBuilder.DropTable(
                name: "sent_bids");

            migrationBuilder.AddColumn<string>(
                name: "state",
                table: "revisions",
                type: "TEXT",
                nullable: false,
                defaultValue: "");
        }
    }
}
