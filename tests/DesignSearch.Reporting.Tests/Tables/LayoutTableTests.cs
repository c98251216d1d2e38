using System.Globalization;
using DesignSearch.Reporting.Tables;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class LayoutTableTests
{
    private static readonly string[] Promised =
    [
        "rank", "slug", "title", "turning", "holds", "passes_checks", "build_price", "life_cost", "score", "frost_hours", "worst_frost_hours", "frost_degree_hours_kh", "lowest_air_c",
        "standby_kwh", "collector_yield_kwh", "pump_hours", "collector_area_m2", "labour_hours", "choice_night_cover", "choice_barrels", "choice_collectors", "choice_turning", "choice_heater", "format_version",
    ];

    [Fact]
    public void Ranking_has_a_row_for_each_layout_and_every_promised_column()
    {
        var run = InventedRun.Finished();
        var rows = CsvRows.Of(LayoutTable.Ranking(run));
        Assert.Equal(run.Judgement.Ranking.Count, rows.Count);
        Assert.Empty(Promised.Except(rows[0].Keys));
    }

    [Fact]
    public void Figures_read_back_to_the_last_bit()
    {
        var run = InventedRun.Finished();
        foreach (var (row, layout) in CsvRows.Of(LayoutTable.Ranking(run)).Zip(run.Judgement.Ranking))
        {
            Assert.Equal(layout.FrostDegreeHoursKh, double.Parse(row["frost_degree_hours_kh"], CultureInfo.InvariantCulture));
            Assert.Equal(layout.LowestAirC, double.Parse(row["lowest_air_c"], CultureInfo.InvariantCulture));
            Assert.Equal(layout.Score, double.Parse(row["score"], CultureInfo.InvariantCulture));
            Assert.Equal(layout.BuildPrice, decimal.Parse(row["build_price"], CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void Front_starts_with_the_bare_house_at_rank_0_and_grows_dearer()
    {
        var rows = CsvRows.Of(LayoutTable.Front(InventedRun.Finished()));
        Assert.Equal("0", rows[0]["rank"]);
        Assert.Equal(rows.Select(r => decimal.Parse(r["life_cost"], CultureInfo.InvariantCulture)).Order(), rows.Select(r => decimal.Parse(r["life_cost"], CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void A_choice_that_sleeps_is_an_empty_cell()
    {
        var run = InventedRun.Finished();
        foreach (var (row, layout) in CsvRows.Of(LayoutTable.Ranking(run)).Zip(run.Judgement.Ranking))
            Assert.Equal(layout.Choices.GetValueOrDefault("turning", ""), row["choice_turning"]);
    }
}
