using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Tables;

/// <summary>The first picks of many runs as one table: a row a run.</summary>
public static class GatherTable
{
    private static readonly (string Name, Func<GatheredRun, object?> Value)[] Columns =
    [
        ("run", r => r.Folder),
        ("state", r => r.State),
        ("name", r => r.Run?.Scenario.Name),
        ("seed", r => r.Run?.Search.Seed.ToString(CultureInfo.InvariantCulture)),
        ("evaluations", r => r.Run?.Search.Evaluations),
        ("exact", r => r.Run is { } run ? YesNo(run.Search.IsExact) : null),
        ("broken_off", r => r.Run is { } run ? YesNo(run.Search.IsPartial) : null),
        ("search_seconds", r => r.Run is { } run ? Math.Round(run.Search.Seconds, 1) : null),
        ("anything_holds", r => r.Run is { } run ? YesNo(run.Judgement.AnythingHolds) : null),
        ("pick", r => Pick(r)?.FullTitle),
        ("build_price", r => Pick(r)?.BuildPrice),
        ("life_cost", r => Pick(r)?.LifeCost),
        ("lowest_air_c", r => Pick(r) is { } pick && double.IsFinite(pick.LowestAirC) ? pick.LowestAirC : null),
        ("standby_kwh", r => Pick(r) is { } pick && double.IsFinite(pick.StandbyKwh) ? pick.StandbyKwh : null),
        ("collector_area_m2", r => Pick(r)?.CollectorAreaM2),
        ("currency", r => r.Run?.Scenario.Currency),
        ("note", r => r.Note),
    ];

    /// <summary>The table as a file holds it.</summary>
    public static string Of(IReadOnlyList<GatheredRun> runs)
    {
        ArgumentNullException.ThrowIfNull(runs);
        var text = new CsvText([], [.. Columns.Select(c => c.Name)]);
        foreach (var run in runs)
            text.Row([.. Columns.Select(c => c.Value(run))]);
        return text.ToString();
    }

    // The first choice; where nothing does there is none.
    private static JudgedLayout? Pick(GatheredRun gathered) => gathered.Run is { Judgement: { AnythingHolds: true } judgement }
        ? judgement.Picks.First is { } rank and > 0 ? judgement.Ranking[rank - 1] : judgement.BareHouse
        : null;

    private static string YesNo(bool value) => value ? "yes" : "no";
}
