using DesignSearch.Reporting.Tables;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>docs/report.md names every column that the tables have, and none that they lack.</summary>
public sealed class ReportGuideTests
{
    [Fact]
    public void The_guide_names_the_columns_of_the_tables_in_their_order()
    {
        var run = InventedRun.Finished();
        var figures = Header(LayoutTable.Ranking(run)).Where(c => !c.StartsWith("choice_", StringComparison.Ordinal));
        var list = Header(ShoppingList.Of(run.Judgement.Ranking[0], "crowns"));
        Assert.Equal(figures, Columns("### `ranking.csv`").Where(c => c != "choice_…"));
        Assert.Equal(list, Columns("### `lists/"));
    }

    private static string[] Header(string table) => table[..table.IndexOf('\n', StringComparison.Ordinal)].Split(',');

    private static IEnumerable<string> Columns(string heading) =>
        File.ReadAllLines(Repository.At("docs", "report.md")).SkipWhile(l => !l.StartsWith(heading, StringComparison.Ordinal)).Skip(1)
            .TakeWhile(l => !l.StartsWith('#')).Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]);
}
