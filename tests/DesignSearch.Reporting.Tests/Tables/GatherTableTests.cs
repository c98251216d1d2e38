using System.Globalization;
using DesignSearch.Reporting.Tables;
using DesignSearch.Runs.Store;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>Many runs in one table: each column under its name, the pick of each run behind it, nothing where there is none.</summary>
public sealed class GatherTableTests
{
    private static readonly string[] OfRun = ["name", "seed", "evaluations", "exact", "broken_off", "search_seconds", "anything_holds", "currency"];
    private static readonly string[] OfPick = ["pick", "build_price", "life_cost", "lowest_air_c", "standby_kwh", "collector_area_m2"];

    [Fact]
    public void A_finished_run_shows_its_cheapest_that_holds()
    {
        var run = InventedRun.Finished();
        var row = Row(new("a/b", "finished", run, "a note"));
        Assert.Equal(["run", "state", .. OfRun.Where(c => c != "currency"), .. OfPick, "currency", "note"], row.Keys);
        var pick = run.Judgement.Ranking[run.Judgement.Picks.First!.Value - 1];
        Assert.Equal(
            [
                "a/b", "finished", "frost-hollow", "7", Text(run.Search.Evaluations), "yes", "no", "12.4", "yes", pick.FullTitle,
                Text(pick.BuildPrice), Text(pick.LifeCost), Text(pick.LowestAirC), Text(pick.StandbyKwh), Text(pick.CollectorAreaM2), "crowns", "a note",
            ],
            row.Values);
    }

    [Fact]
    public void Where_nothing_holds_no_layout_is_picked()
    {
        var row = Row(new("a", "finished", InventedRun.NothingHolds(), ""));
        Assert.Equal(("no", "yes", "no"), (row["exact"], row["broken_off"], row["anything_holds"]));
        Assert.All(OfPick, c => Assert.Equal("", row[c]));
    }

    [Fact]
    public void Where_the_house_holds_by_itself_the_pick_is_the_bare_house()
    {
        var run = InventedRun.Finished();
        var judgement = run.Judgement with { Picks = run.Judgement.Picks with { First = 0 } };
        var row = Row(new("a", "finished", run with { Judgement = judgement }, ""));
        Assert.Equal((judgement.BareHouse.FullTitle, Text(judgement.BareHouse.LifeCost)), (row["pick"], row["life_cost"]));
    }

    [Fact]
    public void A_run_that_is_not_finished_has_its_state_and_note_only()
    {
        var row = Row(new("a", "under way", null, "goes on"));
        Assert.Equal(("a", "under way", "goes on"), (row["run"], row["state"], row["note"]));
        Assert.All(OfRun.Concat(OfPick), c => Assert.Equal("", row[c]));
    }

    private static IReadOnlyDictionary<string, string> Row(GatheredRun run) => Assert.Single(CsvRows.Of(GatherTable.Of([run])));

    private static string Text(IFormattable value) => value.ToString(null, CultureInfo.InvariantCulture);
}
