using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>What the first pick asks for year by year: work by the calendar, and what wears out.</summary>
internal static class UpkeepSection
{
    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout, ScenarioRecord scenario)
    {
        var work = Markup.When(layout.Upkeep.Count > 0, () => Work(layout, scenario));
        var wears = Markup.When(layout.Wears.Count > 0, () => Wears(layout, scenario));
        return Markup.When(layout.Upkeep.Count > 0 || layout.Wears.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="upkeep"><h2 id="upkeep">Looking after it</h2>
            {work}{wears}</section>

            """));
    }

    private static Markup Work(JudgedLayout layout, ScenarioRecord scenario)
    {
        var own = layout.Upkeep.Sum(u => u.HoursPerYear);
        var counted = layout.Running.UpkeepPerYear > 0
            ? $"{Say.Money(layout.Running.UpkeepPerYear, scenario.Currency)} a year of it are counted in the life cost: "
                + (layout.LabourCost > 0 ? "licensed hours, and your own at your rate." : "licensed hours; your own cost nothing there.")
            : "They stand in no cost.";
        return Markup.Of($"""
            <p>About {Hours(own)} of your own work a year, an order of magnitude. {counted}</p>
            {Calendar(layout)}
            """);
    }

    private static Markup Calendar(JudgedLayout layout) => PageTable.Of(
        $"Upkeep of layout {Say.Whole(layout.Rank)}",
        [
            new("work"), new("when"), new("your hours a year", IsFigure: true), new("licensed hours a year", IsFigure: true),
            new("to pay a year", IsFigure: true),
        ],
        layout.Upkeep.Select(u => new Cell[]
        {
            PlainText.Sentence(u.What),
            PlainText.Name(u.When),
            Cell.Figure(Say.Plain(u.HoursPerYear), u.HoursPerYear),
            Cell.Figure(Say.Plain(u.LicensedHoursPerYear), u.LicensedHoursPerYear),
            Say.Cents((decimal)u.LicensedHoursPerYear * layout.LicensedPerHour),
        }));

    private static Markup Wears(JudgedLayout layout, ScenarioRecord scenario) => Markup.Of($"""
        <p>What wears out within {Say.Count(scenario.Years, "year")}, or is hired or bought fresh, comes
        to {Say.Money((decimal)layout.Wears.Sum(w => w.CostPerYear), scenario.Currency)} a year,
        spread over its life; the life cost counts each time it is due, in today's money.</p>
        {PageTable.Of(
            $"What is bought again for layout {Say.Whole(layout.Rank)}",
            [
                new("part"), new("every so many years", IsFigure: true), new("to pay each time", IsFigure: true),
                new("a year", IsFigure: true),
            ],
            layout.Wears.Select(w => new Cell[]
            {
                PlainText.Name(w.Name),
                Cell.Figure(Say.Plain(w.EveryYears), w.EveryYears),
                Say.Cents(w.Price),
                Cell.Figure(Say.TwoFigures(w.CostPerYear), w.CostPerYear),
            }))}

        """);

    private static string Hours(double hours) => Say.TwoFigures(hours) is "1" ? "1 hour" : Say.TwoFigures(hours) + " hours";
}
