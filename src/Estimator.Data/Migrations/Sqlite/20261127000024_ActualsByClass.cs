using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Estimator.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class ActualsByClass : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "job_outcome_classes",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "INTEGER", nullable: false),
                    job_id = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    key = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    @class = table.Column<string>(name: "class", type: "TEXT", maxLength: 60, nullable: false),
                    estimated_e4 = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_job_outcome_classes", x => new { x.company_id, x.job_id, x.kind, x.key, x.@class });
                    table.ForeignKey(
                        name: "FK_job_outcome_classes_job_outcomes_company_id_job_id_kind_key",
                        columns: x => new { x.company_id, x.job_id, x.kind, x.key },
                        principalTable: "job_outcomes",
                        principalColumns: new[] { "company_id", "job_id", "kind", "key" },
                        onDelete: ReferentialAction.Cascade);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "job_outcome_classes");
        }
    }
}
