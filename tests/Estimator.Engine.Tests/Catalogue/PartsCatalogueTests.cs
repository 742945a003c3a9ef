using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Catalogue;

public sealed class PartsCatalogueTests
{
    private static readonly Dictionary<string, string> Sound = new()
    {
        ["items.csv"] = "id,category,description,unit\nplate-1,plate,Plate,each\n",
        ["boxes.csv"] = "item,use,old_work,gangs,volume_in3,internal_clamps\n",
        ["kits.csv"] = "kit,item\n",
        ["labor.csv"] = "item,phase,hours,per,basis\n",
        ["offers.csv"] = "item,supplier,pack_size,price_usd,note\n",
    };

    [Theory]
    [InlineData("offers.csv", "plate-2,a,1,2.00,n", "offers.csv, row 2, item: found 'plate-2'")]
    [InlineData("offers.csv", "plate-1,a,0,2.00,n", "offers.csv, row 2, pack_size: found '0', a number from 1")]
    [InlineData("offers.csv", "plate-1,a,1,cheap,n", "offers.csv, row 2, price_usd: found 'cheap', a number")]
    [InlineData("labor.csv", "plate-1,someday,1,1,b", "labor.csv, row 2, phase: found 'someday', one of")]
    [InlineData("boxes.csv", "plate-1,wall,maybe,1,18,no", "boxes.csv, row 2, old_work: found 'maybe', yes or no")]
    [InlineData("items.csv", "plate-1,plate,Again,each", "items.csv, row 3, id: found 'plate-1'")]
    [InlineData("items.csv", "plate-3,plate,Third,pair", "items.csv, row 3, unit: found 'pair', each or foot")]
    [InlineData("kits.csv", "k,plate-1,2", "kits.csv, row 2: found 3 cells, 2 are accepted")]
    public void Read_BadCell_SaysFileRowColumnFoundAccepted(string file, string row, string says) =>
        Assert.Contains(says, Read(file, Sound[file] + row + "\n").Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("kit,item\n\"k,plate-1\n", "kits.csv, row 2: found a quoted cell that is not closed, a closing \" is accepted")]
    [InlineData("kit,item\nk", "kits.csv, row 2: found 1 cells, 2 are accepted")]
    [InlineData("item,kit\nplate-1,k\n", "kits.csv, row 1: found 'item,kit', the header kit,item is accepted")]
    [InlineData("", "kits.csv, row 1: found '', the header kit,item is accepted")]
    [InlineData("kit,item\nk,plate-1\nk,plate-1\n", "kits.csv, row 3, kit: found 'k', a kit that no other row has is accepted")]
    public void Read_BrokenFile_SaysFileRowFoundAccepted(string text, string says) => Assert.Contains(says, Read("kits.csv", text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("99999999999999999999999999999999")]
    [InlineData("1e30")]
    [InlineData("-1")]
    [InlineData("=1+1")]
    [InlineData("")]
    public void Read_NumberOutOfReach_SaysWhatIsAccepted(string number)
    {
        Assert.Contains("price_usd: found", Read("offers.csv", $"{Sound["offers.csv"]}plate-1,a,1,{number},n\n").Problem, StringComparison.Ordinal);
        Assert.Contains("hours: found", Read("labor.csv", $"{Sound["labor.csv"]}plate-1,rough_in,{number},1,b\n").Problem, StringComparison.Ordinal);
        Assert.Contains("a number from 1 to 500", Read("boxes.csv", $"{Sound["boxes.csv"]}plate-1,wall,no,1,{number},no\n").Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MissingFile_NamesItAndAllThatBelong()
    {
        var files = Sound.Where(f => f.Key != "labor.csv").ToDictionary();
        Assert.Equal(
            "labor.csv: found no such file, items.csv, boxes.csv, kits.csv, labor.csv, offers.csv are accepted, all of them.", PartsCatalogue.Read(files).Problem);
    }

    // RFC 4180, section 2, rules 5 to 7: quoted cells hold commas and line breaks, and a quote is doubled.
    [Theory]
    [InlineData("\"Plate, white\"", "Plate, white")]
    [InlineData("\"Plate\nwhite\"", "Plate\nwhite")]
    [InlineData("\"Plate \"\"wide\"\"\"", "Plate \"wide\"")]
    public void Read_QuotedCell_IsReadAsTheStandardSays(string cell, string text) => Assert.Equal(
        text, Read("items.csv", $"id,category,description,unit\r\np,plate,{cell},each\r\n").Value.Find("p")!.Description);

    [Fact]
    public void Shipped_EveryItemBought_HasAnOffer() =>
        Assert.All(Catalogues.Shipped.Items.Where(i => i.IsBought), i => Assert.NotEmpty(Catalogues.Shipped.OffersFor(i.Id)));

    private static Parsed<PartsCatalogue> Read(string file, string text) =>
        PartsCatalogue.Read(new Dictionary<string, string>(Sound) { [file] = text });
}
