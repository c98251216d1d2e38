using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Reporting.Tables;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class ShoppingListTests
{
    [Fact]
    public void Items_subtotals_and_total_agree_with_the_build_price_to_the_cent()
    {
        foreach (var layout in InventedRun.Finished().Judgement.Ranking)
        {
            var rows = CsvRows.Of(ShoppingList.Of(layout, "crowns"));
            Assert.Equal(layout.Bill.Count, rows.Count(r => r["row"] == "item"));
            Assert.Equal(layout.BuildPrice, Sum("item"));
            Assert.Equal(layout.BuildPrice, Sum("subtotal"));
            Assert.Equal(layout.BuildPrice, Sum("article"));
            Assert.All(rows.Where(r => r["row"] == "total"), r => Assert.Equal(layout.BuildPrice, Total(r)));
            Assert.Equal(["article", "total", "item", "total"], rows.Select(r => r["row"]).Where(r => r != "subtotal").Aggregate(new List<string>(), Runs));
            foreach (var subtotal in rows.Where(r => r["row"] == "subtotal"))
                Assert.Equal(rows.Where(r => r["row"] == "item" && r["system"] == subtotal["system"]).Sum(Total), Total(subtotal));

            decimal Sum(string kind) => rows.Where(r => r["row"] == kind).Sum(Total);
        }

        static List<string> Runs(List<string> runs, string row)
        {
            if (runs.LastOrDefault() != row)
                runs.Add(row);
            return runs;
        }

        static decimal Total(IReadOnlyDictionary<string, string> row) => decimal.Parse(row["total"], CultureInfo.InvariantCulture);
    }

    [Fact]
    public void What_is_on_hand_stands_beside_what_is_needed()
    {
        var layout = InventedRun.Finished().Judgement.Ranking.First(l => l.CollectorAreaM2 > 0);
        var pipe = CsvRows.Of(ShoppingList.Of(layout, "crowns")).Single(r => r["row"] == "item" && r["part_id"] == "pipe-pex-20");
        Assert.Equal(("26.4", "m", "2.35", "12.5", "32.67"), (pipe["quantity"], pipe["unit"], pipe["unit_price"], pipe["owned"], pipe["total"]));
    }

    // 26.4 m of sleeves in pieces of 2 m: fourteen, 28 m at 3.10 are 86.80, and 1.6 m are left.
    [Fact]
    public void What_comes_in_packs_is_bought_whole_and_the_rest_is_told()
    {
        var layout = InventedRun.Finished().Judgement.Ranking.First(l => l.CollectorAreaM2 > 0);
        var sleeve = CsvRows.Of(ShoppingList.Of(layout, "crowns")).Single(r => r["row"] == "article" && r["part_id"] == "insulation-25");
        string[] columns = ["quantity", "pack", "packs", "bought", "left_over", "total"];
        Assert.Equal(["26.4", "2", "14", "28", "1.6", "86.80"], columns.Select(c => sleeve[c]));
    }

    // A pack of nothing would divide by zero; two packs for one part contradict each other.
    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("0.0000000000000000000000000001")]
    [InlineData("20000")]
    public void A_pack_that_cannot_be_is_refused(string pack)
    {
        var layout = InventedRun.Finished().Judgement.Ranking[0];
        var broken = layout with { Bill = [.. layout.Bill.Select(l => l with { Pack = decimal.Parse(pack, CultureInfo.InvariantCulture) })] };
        Assert.Equal("run.json", Assert.Throws<InputException>(() => ShoppingList.Of(broken, "crowns")).Faults[0].File);
    }

    [Fact]
    public void Two_packs_for_one_part_are_refused()
    {
        var layout = InventedRun.Finished().Judgement.Ranking[0];
        var more = layout.Bill[0] with { Quantity = 0, Owned = 0, Total = 0, Pack = 7 };
        Assert.Throws<InputException>(() => ShoppingList.Of(layout with { Bill = [.. layout.Bill, more] }, "crowns"));
    }

    [Fact]
    public void Lines_that_do_not_add_up_are_refused()
    {
        var layout = InventedRun.Finished().Judgement.Ranking[0];
        var fault = Assert.Throws<InputException>(() => ShoppingList.Of(layout with { BuildPrice = layout.BuildPrice + 0.01m }, "crowns"));
        Assert.Equal("run.json", fault.Faults[0].File);
    }
}
