using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Estimator.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Orders : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "purchase_orders",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    id = table.Column<int>(type: "INTEGER", nullable: false),
                    number = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    supplier_id = table.Column<int>(type: "INTEGER", nullable: false),
                    supplier = table.Column<string>(type: "TEXT", nullable: false),
                    phase = table.Column<string>(type: "TEXT", nullable: true),
                    need_by = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    way = table.Column<string>(type: "TEXT", nullable: false),
                    note = table.Column<string>(type: "TEXT", nullable: false),
                    delivery_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    event_count = table.Column<int>(type: "INTEGER", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_purchase_orders", x => new { x.company_id, x.id });
                    table.ForeignKey(
                        name: "FK_purchase_orders_suppliers_company_id_supplier_id",
                        columns: x => new { x.company_id, x.supplier_id },
                        principalTable: "suppliers",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "purchase_order_events",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    order_id = table.Column<int>(type: "INTEGER", nullable: false),
                    sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    on = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    line = table.Column<int>(type: "INTEGER", nullable: false),
                    packs = table.Column<int>(type: "INTEGER", nullable: false),
                    amount_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    until = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    who = table.Column<string>(type: "TEXT", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_purchase_order_events", x => new { x.company_id, x.order_id, x.sequence });
                    table.ForeignKey(
                        name: "FK_purchase_order_events_purchase_orders_company_id_order_id",
                        columns: x => new { x.company_id, x.order_id },
                        principalTable: "purchase_orders",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "purchase_order_jobs",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    order_id = table.Column<int>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    place = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_purchase_order_jobs", x => new { x.company_id, x.order_id, x.job_id });
                    table.ForeignKey(
                        name: "FK_purchase_order_jobs_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_purchase_order_jobs_purchase_orders_company_id_order_id",
                        columns: x => new { x.company_id, x.order_id },
                        principalTable: "purchase_orders",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "purchase_order_lines",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    order_id = table.Column<int>(type: "INTEGER", nullable: false),
                    line = table.Column<int>(type: "INTEGER", nullable: false),
                    item = table.Column<string>(type: "TEXT", nullable: false),
                    description = table.Column<string>(type: "TEXT", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    pack_size = table.Column<int>(type: "INTEGER", nullable: false),
                    packs = table.Column<int>(type: "INTEGER", nullable: false),
                    pack_price_e4 = table.Column<long>(type: "INTEGER", nullable: false),
                    number = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_purchase_order_lines", x => new { x.company_id, x.order_id, x.line });
                    table.ForeignKey(
                        name: "FK_purchase_order_lines_purchase_orders_company_id_order_id",
                        columns: x => new { x.company_id, x.order_id },
                        principalTable: "purchase_orders",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_purchase_order_jobs_company_id_job_id",
                table: "purchase_order_jobs",
                columns: new[] { "company_id", "job_id" });

            migrationBuilder.CreateIndex(
                name: "IX_purchase_orders_company_id_number",
                table: "purchase_orders",
                columns: new[] { "company_id", "number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_purchase_orders_company_id_supplier_id",
                table: "purchase_orders",
                columns: new[] { "company_id", "supplier_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "purchase_order_events");

            migrationBuilder.DropTable(
                name: "purchase_order_jobs");

            migrationBuilder.DropTable(
                name: "purchase_order_lines");

            migrationBuilder.DropTable(
                name: "purchase_orders");
        }
    }
}
