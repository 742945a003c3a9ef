using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Estimator.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Supply : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "item_gtins",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    gtin = table.Column<string>(type: "text", nullable: false),
                    item = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_item_gtins", x => new { x.company_id, x.gtin });
                    table.ForeignKey(
                        name: "FK_item_gtins_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "stock_counts",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    item = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    count_e4 = table.Column<long>(type: "bigint", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_stock_counts", x => new { x.company_id, x.item });
                    table.ForeignKey(
                        name: "FK_stock_counts_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "stock_pieces",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    id = table.Column<int>(type: "integer", nullable: false),
                    item = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    label = table.Column<string>(type: "text", nullable: false),
                    length_nm = table.Column<long>(type: "bigint", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_stock_pieces", x => new { x.company_id, x.id });
                    table.ForeignKey(
                        name: "FK_stock_pieces_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "suppliers",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    id = table.Column<int>(type: "integer", nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    account = table.Column<string>(type: "text", nullable: false),
                    contact = table.Column<string>(type: "text", nullable: false),
                    note = table.Column<string>(type: "text", nullable: false),
                    way = table.Column<string>(type: "text", nullable: false),
                    delivery_e4 = table.Column<long>(type: "bigint", nullable: false),
                    minimum_e4 = table.Column<long>(type: "bigint", nullable: false),
                    free_from_e4 = table.Column<long>(type: "bigint", nullable: true),
                    active = table.Column<bool>(type: "boolean", nullable: false),
                    matching_json = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_suppliers", x => new { x.company_id, x.id });
                    table.ForeignKey(
                        name: "FK_suppliers_companies_company_id",
                        column: x => x.company_id,
                        principalTable: "companies",
                        principalColumn: "company_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "price_imports",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    supplier_id = table.Column<int>(type: "integer", nullable: false),
                    number = table.Column<int>(type: "integer", nullable: false),
                    file_name = table.Column<string>(type: "text", nullable: false),
                    file_hash = table.Column<string>(type: "text", nullable: false),
                    who = table.Column<string>(type: "text", nullable: false),
                    at_utc_ticks = table.Column<long>(type: "bigint", nullable: false),
                    prices = table.Column<int>(type: "integer", nullable: false),
                    withdrawn = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_price_imports", x => new { x.company_id, x.supplier_id, x.number });
                    table.ForeignKey(
                        name: "FK_price_imports_suppliers_company_id_supplier_id",
                        columns: x => new { x.company_id, x.supplier_id },
                        principalTable: "suppliers",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "supplier_numbers",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    supplier_id = table.Column<int>(type: "integer", nullable: false),
                    number = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    item = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_supplier_numbers", x => new { x.company_id, x.supplier_id, x.number });
                    table.ForeignKey(
                        name: "FK_supplier_numbers_suppliers_company_id_supplier_id",
                        columns: x => new { x.company_id, x.supplier_id },
                        principalTable: "suppliers",
                        principalColumns: new[] { "company_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "supplier_prices",
                columns: table => new
                {
                    company_id = table.Column<long>(type: "bigint", nullable: false),
                    supplier_id = table.Column<int>(type: "integer", nullable: false),
                    item = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    pack_size = table.Column<int>(type: "integer", nullable: false),
                    import = table.Column<int>(type: "integer", nullable: false),
                    file_row = table.Column<int>(type: "integer", nullable: false),
                    price_e4 = table.Column<long>(type: "bigint", nullable: true),
                    quoted_on = table.Column<DateOnly>(type: "date", nullable: false),
                    expires_on = table.Column<DateOnly>(type: "date", nullable: true),
                    number = table.Column<string>(type: "text", nullable: false),
                    gtin = table.Column<string>(type: "text", nullable: false),
                    make = table.Column<string>(type: "text", nullable: false),
                    series = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_supplier_prices", x => new { x.company_id, x.supplier_id, x.item, x.pack_size, x.import });
                    table.ForeignKey(
                        name: "FK_supplier_prices_price_imports_company_id_supplier_id_import",
                        columns: x => new { x.company_id, x.supplier_id, x.import },
                        principalTable: "price_imports",
                        principalColumns: new[] { "company_id", "supplier_id", "number" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_supplier_prices_company_id_item",
                table: "supplier_prices",
                columns: new[] { "company_id", "item" });

            migrationBuilder.CreateIndex(
                name: "IX_supplier_prices_company_id_supplier_id_import",
                table: "supplier_prices",
                columns: new[] { "company_id", "supplier_id", "import" });

            migrationBuilder.CreateIndex(
                name: "IX_suppliers_company_id_name",
                table: "suppliers",
                columns: new[] { "company_id", "name" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "item_gtins");

            migrationBuilder.DropTable(
                name: "stock_counts");

            migrationBuilder.DropTable(
                name: "stock_pieces");

            migrationBuilder.DropTable(
                name: "supplier_numbers");

            migrationBuilder.DropTable(
                name: "supplier_prices");

            migrationBuilder.DropTable(
                name: "price_imports");

            migrationBuilder.DropTable(
                name: "suppliers");
        }
    }
}
