using System;
using System.Collections.Generic;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Estimator.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "catalogues",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    hash = table.Column<string>(type: "text", nullable: false),
                    files_json = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_catalogues", x => new { x.company_id, x.hash });
                });

            migrationBuilder.CreateTable(
                name: "companies",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    address_lines = table.Column<List<string>>(type: "text[]", nullable: false),
                    licence = table.Column<string>(type: "text", nullable: false),
                    rates_json = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_companies", x => x.company_id);
                });

            migrationBuilder.CreateTable(
                name: "jobs",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    id = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    search_text = table.Column<string>(type: "text", nullable: false),
                    state = table.Column<string>(type: "text", nullable: false),
                    archived = table.Column<bool>(type: "boolean", nullable: false),
                    json = table.Column<string>(type: "text", nullable: false),
                    created_utc_ticks = table.Column<long>(type: "bigint", nullable: false),
                    changed_utc_ticks = table.Column<long>(type: "bigint", nullable: false),
                    changed_by = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_jobs", x => new { x.company_id, x.id });
                    table.ForeignKey(
                        name: "FK_jobs_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "local_prices",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    item = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    supplier = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    pack_size = table.Column<int>(type: "integer", nullable: false),
                    price_e4 = table.Column<long>(type: "bigint", nullable: false),
                    as_of = table.Column<DateOnly>(type: "date", nullable: false),
                    note = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_local_prices", x => new { x.company_id, x.item, x.supplier, x.pack_size });
                    table.ForeignKey(
                        name: "FK_local_prices_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "job_edits",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    sequence = table.Column<int>(type: "integer", nullable: false),
                    edit_id = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    title = table.Column<string>(type: "text", nullable: false),
                    json = table.Column<string>(type: "text", nullable: false),
                    targets = table.Column<List<string>>(type: "text[]", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_job_edits", x => new { x.company_id, x.job_id, x.sequence });
                    table.ForeignKey(
                        name: "FK_job_edits_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "job_snapshots",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false),
                    json = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_job_snapshots", x => new { x.company_id, x.job_id, x.version });
                    table.ForeignKey(
                        name: "FK_job_snapshots_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revisions",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    number = table.Column<int>(type: "integer", nullable: false),
                    job_version = table.Column<int>(type: "integer", nullable: false),
                    engine_hash = table.Column<string>(type: "text", nullable: false),
                    catalogue_hash = table.Column<string>(type: "text", nullable: false),
                    job_json = table.Column<string>(type: "text", nullable: false),
                    state = table.Column<string>(type: "text", nullable: false),
                    note = table.Column<string>(type: "text", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "bigint", nullable: false),
                    direct_cost_e4 = table.Column<long>(type: "bigint", nullable: false),
                    low_e4 = table.Column<long>(type: "bigint", nullable: false),
                    likely_e4 = table.Column<long>(type: "bigint", nullable: false),
                    high_e4 = table.Column<long>(type: "bigint", nullable: false),
                    hours_e4 = table.Column<long>(type: "bigint", nullable: false),
                    openings_e4 = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revisions", x => new { x.company_id, x.job_id, x.number });
                    table.ForeignKey(
                        name: "FK_revisions_catalogues_company_id_catalogue_hash",
                        columns: x => new { x.company_id, x.catalogue_hash },
                        principalTable: "catalogues",
                        principalColumns: new[] { "company_id", "hash" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_revisions_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revision_boxes",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    line = table.Column<int>(type: "integer", nullable: false),
                    item = table.Column<string>(type: "text", nullable: true),
                    use = table.Column<string>(type: "text", nullable: false),
                    gangs = table.Column<int>(type: "integer", nullable: false),
                    old_work = table.Column<bool>(type: "boolean", nullable: false),
                    boxes = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revision_boxes", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_revision_boxes_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revision_breakers",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    line = table.Column<int>(type: "integer", nullable: false),
                    panel = table.Column<string>(type: "text", nullable: false),
                    rating_a = table.Column<int>(type: "integer", nullable: false),
                    poles = table.Column<int>(type: "integer", nullable: false),
                    protection = table.Column<string>(type: "text", nullable: false),
                    breakers = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revision_breakers", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_revision_breakers_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revision_cables",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    line = table.Column<int>(type: "integer", nullable: false),
                    item = table.Column<string>(type: "text", nullable: false),
                    method = table.Column<string>(type: "text", nullable: false),
                    size = table.Column<string>(type: "text", nullable: false),
                    conductors = table.Column<int>(type: "integer", nullable: false),
                    fished = table.Column<bool>(type: "boolean", nullable: false),
                    runs = table.Column<int>(type: "integer", nullable: false),
                    length_nm = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revision_cables", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_revision_cables_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revision_connectors",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    line = table.Column<int>(type: "integer", nullable: false),
                    item = table.Column<string>(type: "text", nullable: false),
                    description = table.Column<string>(type: "text", nullable: false),
                    connectors = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revision_connectors", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_revision_connectors_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revision_labor",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    line = table.Column<int>(type: "integer", nullable: false),
                    phase = table.Column<string>(type: "text", nullable: false),
                    item = table.Column<string>(type: "text", nullable: false),
                    quantity_e4 = table.Column<long>(type: "bigint", nullable: false),
                    hours_e4 = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revision_labor", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_revision_labor_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "revision_takeoff_lines",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    line = table.Column<int>(type: "integer", nullable: false),
                    item = table.Column<string>(type: "text", nullable: false),
                    category = table.Column<string>(type: "text", nullable: false),
                    description = table.Column<string>(type: "text", nullable: false),
                    unit = table.Column<string>(type: "text", nullable: false),
                    quantity_e4 = table.Column<long>(type: "bigint", nullable: false),
                    owner_supplied = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revision_takeoff_lines", x => new { x.company_id, x.job_id, x.revision, x.line });
                    table.ForeignKey(
                        name: "FK_revision_takeoff_lines_revisions_company_id_job_id_revision",
                        columns: x => new { x.company_id, x.job_id, x.revision },
                        principalTable: "revisions",
                        principalColumns: new[] { "company_id", "job_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_job_edits_company_id_job_id_edit_id",
                table: "job_edits",
                columns: new[] { "company_id", "job_id", "edit_id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_jobs_company_id_archived_changed_utc_ticks",
                table: "jobs",
                columns: new[] { "company_id", "archived", "changed_utc_ticks" });

            migrationBuilder.CreateIndex(
                name: "IX_revisions_company_id_catalogue_hash",
                table: "revisions",
                columns: new[] { "company_id", "catalogue_hash" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "job_edits");

            migrationBuilder.DropTable(
                name: "job_snapshots");

            migrationBuilder.DropTable(
                name: "local_prices");

            migrationBuilder.DropTable(
                name: "revision_boxes");

            migrationBuilder.DropTable(
                name: "revision_breakers");

            migrationBuilder.DropTable(
                name: "revision_cables");

            migrationBuilder.DropTable(
                name: "revision_connectors");

            migrationBuilder.DropTable(
                name: "revision_labor");

            migrationBuilder.DropTable(
                name: "revision_takeoff_lines");

            migrationBuilder.DropTable(
                name: "revisions");

            migrationBuilder.DropTable(
                name: "catalogues");

            migrationBuilder.DropTable(
                name: "jobs");

            migrationBuilder.DropTable(
                name: "companies");
        }
    }
}
