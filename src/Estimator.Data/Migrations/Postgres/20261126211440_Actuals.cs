using System;
using System.Collections.Generic;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Estimator.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Actuals : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "actual_hours",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    id = table.Column<int>(type: "integer", nullable: false),
                    day = table.Column<DateOnly>(type: "date", nullable: false),
                    phase = table.Column<string>(type: "text", nullable: false),
                    hours_e4 = table.Column<long>(type: "bigint", nullable: false),
                    note = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_actual_hours", x => new { x.company_id, x.job_id, x.id });
                    table.ForeignKey(
                        name: "FK_actual_hours_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "job_closings",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    closed_on = table.Column<DateOnly>(type: "date", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_job_closings", x => new { x.company_id, x.job_id });
                    table.ForeignKey(
                        name: "FK_job_closings_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "own_units",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    id = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    key = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    factor_e4 = table.Column<long>(type: "bigint", nullable: false),
                    low_e4 = table.Column<long>(type: "bigint", nullable: false),
                    high_e4 = table.Column<long>(type: "bigint", nullable: false),
                    accepted = table.Column<bool>(type: "boolean", nullable: false),
                    jobs = table.Column<List<string>>(type: "text[]", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "bigint", nullable: false),
                    ended_by = table.Column<string>(type: "text", nullable: false),
                    ended_utc_ticks = table.Column<long>(type: "bigint", nullable: true),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_own_units", x => new { x.company_id, x.id });
                    table.ForeignKey(
                        name: "FK_own_units_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "used_material",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    item = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    quantity_e4 = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_used_material", x => new { x.company_id, x.job_id, x.item });
                    table.ForeignKey(
                        name: "FK_used_material_jobs_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "jobs",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "job_outcomes",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    job_id = table.Column<string>(type: "character varying(100)", nullable: false),
                    kind = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    key = table.Column<string>(type: "character varying(60)", maxLength: 60, nullable: false),
                    estimated_e4 = table.Column<long>(type: "bigint", nullable: false),
                    actual_e4 = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_job_outcomes", x => new { x.company_id, x.job_id, x.kind, x.key });
                    table.ForeignKey(
                        name: "FK_job_outcomes_job_closings_company_id_job_id",
                        columns: x => new { x.company_id, x.job_id },
                        principalTable: "job_closings",
                        principalColumns: new[] { "company_id", "job_id" },
                        onDelete: ReferentialAction.Cascade);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "actual_hours");

            migrationBuilder.DropTable(
                name: "job_outcomes");

            migrationBuilder.DropTable(
                name: "own_units");

            migrationBuilder.DropTable(
                name: "used_material");

            migrationBuilder.DropTable(
                name: "job_closings");
        }
    }
}
