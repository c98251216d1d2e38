using System.Globalization;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The week that tries each pick hardest, hour by hour: a drawing, its finding, its figures.</summary>
internal static class WeekSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run)
    {
        var picks = PickNames.Of(run.Judgement)
            .Select(p => (Name: PickNames.Heading(p.Names), run.Weighing.Picks.FirstOrDefault(w => w.Rank == p.Layout.Rank)?.Week))
            .Where(p => p.Week is { Hours.Count: > 1 })
            .ToList();
        return Markup.When(picks.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="week"><h2 id="week">The hardest week, hour by hour</h2>
            {picks.Select((p, i) => One(p.Name, p.Week!, run.Scenario.FrostLimitC, i))}</section>

            """));
    }

    private static Markup One(string name, Week week, double limitC, int number)
    {
        Markup Chart(double width, string id) => WeekChart.Of(week, limitC, width, id, Finding(week, limitC));
        var (wide, narrow) = (Chart(860, $"week{number}w"), Chart(340, $"week{number}n"));
        var figure = Markup.Of($"""
            <figure><figcaption><strong>{name}, {PlainText.Name(week.Winter)} winter, seven days from {Day(week.Start)}.</strong> {Finding(week, limitC)}</figcaption>
            <div class="wide">{wide}</div><div class="narrow">{narrow}</div></figure>
            <details class="figures"><summary>The same as a table</summary>
            {Table(name, week)}</details>

            """);
        return number == 0 ? figure : Markup.Of($"""
            <details><summary>{name}: its week</summary>
            {figure}</details>

            """);
    }

    private static string Finding(Week week, double limitC)
    {
        var coldest = Enumerable.Range(0, week.Hours.Count).MinBy(i => (Math.Round(week.Hours[i].AirC, 1), week.Hours[i].OutsideC));
        var hour = week.Hours[coldest];
        var heater = week.Hours.Sum(h => h.HeaterW) / 1000;
        var sun = week.Hours.Sum(h => h.SunWPerM2) / 1000 / (week.Hours.Count / 24.0);
        var frost = week.Hours.Count(h => h.AirC < limitC);
        var when = week.Start.AddHours(coldest).ToString("d MMMM, HH:mm", CultureInfo.InvariantCulture);
        var below = frost == 0 ? "no hour is" : $"{Say.Count(frost, "hour")} {(frost == 1 ? "is" : "are")}";
        var heat = heater > 0 ? Say.Kwh(heater) + " in the week" : "nothing";
        return $"In the coldest hour, {when}, it is {Say.Air(hour.AirC, limitC)} {week.Plants?.Where ?? "inside"}, "
            + $"{Say.Celsius(hour.OutsideC)} outside, and the bare house would have {Say.Celsius(hour.BareAirC)}; "
            + $"{below} below the limit. The sun gives {Say.TwoFigures(sun)} kWh/m² a day, electric heat {heat}.";
    }

    private static Markup Table(string name, Week week)
    {
        var hasTank = week.Hours.Any(h => double.IsFinite(h.TankC));
        Column[] columns =
        [
            new("hour from"),
            new("outside [°C]", IsFigure: true),
            new($"{week.Plants?.Where ?? "inside"} [°C]", IsFigure: true),
            new("bare house [°C]", IsFigure: true),
            .. hasTank ? new Column[] { new("tank [°C]", IsFigure: true), new("pump [%]", IsFigure: true) } : [],
            new("sun [W/m²]", IsFigure: true),
            new("electric heat [W]", IsFigure: true),
        ];
        var rows = Enumerable.Range(0, week.Hours.Count).Select(i =>
        {
            var h = week.Hours[i];
            Cell[] cells =
            [
                week.Start.AddHours(i).ToString("d MMM HH:mm", CultureInfo.InvariantCulture),
                Tenth(h.OutsideC),
                Tenth(h.AirC),
                Tenth(h.BareAirC),
                .. hasTank ? new Cell[] { Tenth(h.TankC), Say.Whole(100 * h.PumpShare) } : [],
                Say.Whole(h.SunWPerM2),
                Say.Whole(h.HeaterW),
            ];
            return cells;
        });
        return Markup.Of($"""<div class="fronts">{PageTable.Of($"{name}: the week hour by hour", columns, rows)}</div>""");
    }

    private static string Tenth(double value) => double.IsFinite(value) ? Say.Plain(Math.Round(value, 1)) : "–";

    private static string Day(DateTime day) => day.ToString("d MMMM", CultureInfo.InvariantCulture);
}
