using System.Globalization;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The winters a run was judged on, and the coldest hour of each in the picked layouts.</summary>
internal static class WintersSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var scenario = run.Scenario;
        var columns = new Column[]
        {
            new("winter"),
            new("kind"),
            new("weight", IsFigure: true),
            new("mean outside", IsFigure: true),
            new("lowest outside", IsFigure: true),
            new("hours below the limit outside", IsFigure: true),
            new("sun on the flat a day", IsFigure: true),
        };
        var rows = scenario.Winters.Select(w => new Cell[]
        {
            PlainText.Name(w.Name), PlainText.Name(w.Kind), Say.Percent(w.Weight), Say.Celsius(w.MeanC),
            Say.Celsius(w.LowestC), Say.TwoFigures(w.FrostHoursOutside),
            Say.TwoFigures(w.SunKwhPerM2Day) + "\u00A0kWh/m²",
        });
        var remarks = scenario.Winters.SelectMany(w => w.Remarks.Select(r => Markup.Of($"<li>{PlainText.Name(w.Name)}: {r}</li>")));
        var list = remarks.ToList();
        var told = Markup.When(list.Count > 0, () => Markup.Of($"<ul>{list}</ul>\n"));
        var table = PageTable.Of($"Winters, {PlainText.Name(scenario.Season)}", columns, rows);
        return Markup.Of($"""
            <section aria-labelledby="winters"><h2 id="winters">The winters it was tried on</h2>
            <p>{scenario.WeatherSource}</p>
            {Shares(run)}{table}{told}<h3>The coldest hour</h3>
            {Coldest(run)}</section>

            """);
    }

    /// <summary>What each winter did to some layouts, one line a winter and layout.</summary>
    public static Markup Table(StoredRun run, string caption, IEnumerable<(string Name, JudgedLayout Layout)> layouts)
    {
        var starts = run.Scenario.Winters.Where(w => w.Start is not null).GroupBy(w => w.Name).ToDictionary(g => g.Key, g => g.First().Start!.Value);
        var columns = new Column[]
        {
            new("layout"),
            new("winter"),
            new("lowest air", IsFigure: true),
            new("when"),
            new("frost hours", IsFigure: true),
            new("frost degree-hours", IsFigure: true),
            new("electric heat", IsFigure: true),
            new("tank, lowest to highest", IsFigure: true),
        };
        var rows = layouts.SelectMany(l => l.Layout.Winters.Select(w => new Cell[]
        {
            l.Name,
            PlainText.Name(w.Winter),
            PlantAir.Of(w.Outcome.LowestAirC, run.Scenario.FrostLimitC, l.Layout.Plants),
            When(w, starts),
            Cell.Figure(Say.TwoFigures(w.Outcome.FrostHours), w.Outcome.FrostHours),
            Cell.Figure(Say.DegreeHours(w.Outcome.FrostDegreeHoursKh), w.Outcome.FrostDegreeHoursKh),
            Cell.Figure(Say.Kwh(w.Outcome.StandbyKwh), w.Outcome.StandbyKwh),
            double.IsFinite(w.Outcome.TankLowestC) ? $"{Say.Celsius(w.Outcome.TankLowestC)} to {Say.Celsius(w.Outcome.TankHighestC)}" : "no tank",
        }));
        return PageTable.Of(caption, columns, rows, sortable: true);
    }

    private static Markup Shares(StoredRun run)
    {
        var columns = new Column[]
        {
            new("weather"),
            new("measured", IsFigure: true),
            new("computed by the provider", IsFigure: true),
            new("filled from neighbouring hours", IsFigure: true),
            new("made from other figures", IsFigure: true),
        };
        return PageTable.Of(
            "Where the weather came from", columns,
            run.Scenario.WeatherShares.Select(s => new Cell[]
            {
                PlainText.Name(s.Field),
                Say.Percent(s.Measured),
                Say.Percent(s.Modelled),
                Say.Percent(s.Filled),
                Say.Percent(s.Synthesised),
            }));
    }

    private static Markup Coldest(StoredRun run) => Table(
        run,
        "Coldest hour of each winter, bare house and picks",
        PickNames.Of(run.Judgement).Select(p => (PickNames.Heading(p.Names), p.Layout)).Prepend(("Bare house", run.Judgement.BareHouse)));

    private static Cell When(WinterOutcome winter, Dictionary<string, DateTime> starts)
    {
        if (!starts.TryGetValue(winter.Winter, out var start))
            return "not kept";
        var hour = start.AddHours(winter.Outcome.ColdestHour);
        var words = string.Create(CultureInfo.InvariantCulture, $"{hour:d MMMM, HH:mm} to {hour.AddHours(1):HH:mm}");
        return Cell.Figure(words, winter.Outcome.ColdestHour);
    }
}
