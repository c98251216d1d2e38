using System.Globalization;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>How the answer was found and what would be needed to find it again.</summary>
internal static class MethodSection
{
    private static readonly Markup Way = Markup.Of(
        $"A search varied the choices of the scenario, simulated the greenhouse hour by hour over each winter for every layout it "
            + $"tried, and kept those that no other beats on both life cost and frost, and those with the most frost-free hours "
            + $"for their cost.");

    private static readonly Markup Holds = Markup.Of(
        $"A layout holds when no winter it was tried on has a frost hour and every check passes.");

    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var (search, scenario) = (run.Search, run.Scenario);
        return Markup.Of($"""
            <section aria-labelledby="method"><h2 id="method">How this was found</h2>
            <p>{Way} {search.StoppedInWords}</p>
            <p>{FrostHour(scenario)}{PlantsApart(run)} {LifeCost(scenario)} {Holds}</p>
            <p>Files that went in, seed and times: <a href="{FiguresPage.Name}#search">{FiguresPage.Name}</a>.</p></section>

            """);
    }

    /// <summary>What would be needed to find it again, as tables.</summary>
    /// <param name="run">The run.</param>
    public static Markup Tables(StoredRun run)
    {
        var inputs = run.Inputs.Select(i => new Cell[]
        {
            PlainText.Name(i.File), new(Markup.Of($"<code>{PlainText.Name(i.Sha256)}</code>")),
        });
        return Markup.Of($"""
            <section aria-labelledby="search"><h2 id="search">How to find it again</h2>
            {PageTable.Of("Figures of the search", [new("item"), new("value")], Facts(run))}
            {PageTable.Of("Files that went in", [new("file"), new("SHA-256")], inputs)}</section>

            """);
    }

    private static Markup FrostHour(ScenarioRecord scenario) => Markup.Of(
        $"A frost hour is an hour whose mean air inside lies below {Say.Plain(scenario.FrostLimitC)}{"\u00A0"}°C; "
            + $"frost degree-hours add up by how much.");

    private static Markup LifeCost(ScenarioRecord scenario) => Markup.Of(
        $"Life cost is the build price and the present value of {Say.Count(scenario.Years, "year")} of running and replacement "
            + $"at {Say.Plain(100 * scenario.Interest)}{"\u202F"}% interest and {Say.Plain((double)scenario.TariffPerKwh)} "
            + $"{PlainText.Cut(scenario.Currency, 24)} a kilowatt-hour.");

    private static string PlantsApart(StoredRun run) => run.Judgement.Ranking.Select(l => l.Plants).FirstOrDefault(p => p is not null) is { } place
        ? $" Where a layout does not hold the whole house, its frost and its lowest air, in every table, are those {place.Where}."
        : "";

    private static IEnumerable<Cell[]> Facts(StoredRun run)
    {
        var (search, scenario) = (run.Search, run.Scenario);
        yield return ["program", "DesignSearch " + PlainText.Name(run.ProgramVersion)];
        yield return ["format of the stored run", Say.Whole(run.FormatVersion)];
        yield return ["format of the pages", PageShell.Format];
        yield return ["seed", search.Seed.ToString(CultureInfo.InvariantCulture)];
        yield return ["layouts simulated", Say.Whole(search.Evaluations)];
        yield return ["time taken", Say.TwoFigures(search.Seconds) + " seconds"];
        yield return
        [
            "place",
            $"{Say.Plain(Math.Abs(scenario.LatitudeDeg))}° {(scenario.LatitudeDeg < 0 ? "south" : "north")}, "
                + $"{Say.Plain(Math.Abs(scenario.LongitudeDeg))}° {(scenario.LongitudeDeg < 0 ? "west" : "east")}",
        ];
    }
}
