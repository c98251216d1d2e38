using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Tables;

/// <summary>Writes layouts one a row with every figure in full: <c>ranking.csv</c> and <c>front.csv</c>.</summary>
/// <remarks>The last column carries the version of the format, so that the first line is the header and any spreadsheet reads the file as it is.</remarks>
internal static class LayoutTable
{
    /// <summary>Version of the format.</summary>
    public const int Format = 1;

    private const string ChoicePrefix = "choice_";

    // Adding it makes a sum show its cents, zeros included.
    private const decimal ToCents = 0.00m;

    private static readonly (string Name, Func<JudgedLayout, object?> Value)[] Figures =
    [
        ("rank", l => l.Rank),
        ("slug", l => l.Slug),
        ("title", l => l.FullTitle),
        ("turning", l => l.Turning),
        ("holds", l => YesNo(l.Holds)),
        ("passes_checks", l => YesNo(l.PassesChecks)),
        ("build_price", l => ToCents + l.BuildPrice),
        ("life_cost", l => ToCents + l.LifeCost),
        ("electricity_per_year", l => ToCents + l.Running.ElectricityPerYear),
        ("upkeep_per_year", l => ToCents + l.Running.UpkeepPerYear),
        ("replacements_present_value", l => ToCents + l.Running.ReplacementsPresentValue),
        ("running_present_value", l => ToCents + l.Running.PresentValue),
        ("score", l => Finite(l.Score)),
        ("frost_hours", l => Finite(l.FrostHours)),
        ("worst_frost_hours", l => l.WorstFrostHours),
        ("frost_degree_hours_kh", l => Finite(l.FrostDegreeHoursKh)),
        ("lowest_air_c", l => Finite(l.LowestAirC)),
        ("standby_kwh", l => Finite(l.StandbyKwh)),
        ("collector_yield_kwh", l => Finite(l.CollectorYieldKwh)),
        ("pump_hours", l => Finite(l.PumpHours)),
        ("collector_area_m2", l => Finite(l.CollectorAreaM2)),
        ("labour_hours", l => Finite(l.LabourHours)),
    ];

    /// <summary>Every ranked layout, the best first.</summary>
    public static string Ranking(StoredRun run) => Write(run, run.Judgement.Ranking);

    /// <summary>The front, the cheapest first; the bare house has rank 0.</summary>
    public static string Front(StoredRun run) => Write(run, run.Judgement.Front.Select(r => r == 0 ? run.Judgement.BareHouse : run.Judgement.Ranking[r - 1]));

    private static string Write(StoredRun run, IEnumerable<JudgedLayout> layouts)
    {
        var choices = run.Judgement.Ranking.SelectMany(l => l.Choices.Keys).Distinct().ToList();
        var table = new CsvText([], [.. Figures.Select(f => f.Name), .. choices.Select(c => ChoicePrefix + c), "currency", "format_version"]);
        foreach (var layout in layouts)
            table.Row([.. Figures.Select(f => f.Value(layout)), .. choices.Select(c => (object?)layout.Choices.GetValueOrDefault(c)), run.Scenario.Currency, Format]);
        return table.ToString();
    }

    private static string YesNo(bool value) => value ? "yes" : "no";

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
