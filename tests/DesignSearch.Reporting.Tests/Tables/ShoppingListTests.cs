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
            Assert.Equal(layout.BuildPrice, Sum("total"));
            foreach (var subtotal in rows.Where(r => r["row"] == "subtotal"))
                Assert.Equal(rows.Where(r => r["row"] == "item" && r["system"] == subtotal["system"]).Sum(Total), Total(subtotal));

            decimal Sum(string kind) => rows.Where(r => r["row"] == kind).Sum(Total);
        }

        static decimal Total(IReadOnlyDictionary<string, string> row) => decimal.Parse(row["total"], CultureInfo.InvariantCulture);
    }

    [Fact]
    public void What_is_on_hand_stands_beside_what_is_needed()
    {
        var layout = InventedRun.Finished().Judgement.Ranking.First(l => l.CollectorAreaM2 > 0);
        var pipe = CsvRows.Of(ShoppingList.Of(layout, "crowns")).Single(r => r["part_id"] == "pipe-pex-20");
        Assert.Equal(("26.4", "m", "2.35", "12.5", "32.66"), (pipe["quantity"], pipe["unit"], pipe["unit_price"], pipe["owned"], pipe["total"]));
    }

    [Fact]
    public void Lines_that_do_not_add_up_are_refused()
    {
        var layout = InventedRun.Finished().Judgement.Ranking[0];
        var fault = Assert.Throws<InputException>(() => ShoppingList.Of(layout with { BuildPrice = layout.BuildPrice + 0.01m }, "crowns"));
        Assert.Equal("run.json", fault.Faults[0].File);
    }
}
