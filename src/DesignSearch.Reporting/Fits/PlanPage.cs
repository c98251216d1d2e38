using DesignSearch.Fitting.Plan;
using DesignSearch.Fitting.Words;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Words;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Page;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Fits;

/// <summary>Builds the page of a test of three nights, to print and take along.</summary>
public static class PlanPage
{
    private const double Width = 460, Height = 320;
    private const double OutM = 1.6;
    private const int Days = 6;

    /// <summary>The page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="programVersion">Version that made it.</param>
    public static string Of(TestPlan plan, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return PageShell.Of($"{PlainText.Name(plan.Name)}: a test of three nights", "Skip to the plan", programVersion, Markup.Of($"""
            <header><p class="place">{PlainText.Name(plan.Name)}</p>
            <h1>{PlainText.Sentence(Title(plan))}</h1></header>
            <main id="content" tabindex="-1">
            {List("What to borrow", PlanWords.Borrow(plan))}
            <section><h2>Where each hangs</h2>{Picture(plan).OnPage()}
            <ol>{PlanWords.Sensors.Select(s => Markup.Of($"<li>{PlainText.Sentence(s)}</li>"))}</ol></section>
            {List("Evening by evening", PlanWords.Nights(plan))}
            {List("Nights that will not do", PlanWords.NotThese(plan))}
            {List("What stays shut", PlanWords.Shut)}
            {List("What can hurt you", PlanWords.Cautions(plan))}
            <section><h2>A line a day</h2>
            {PageTable.Of("To write in by hand", [.. PlanWords.Line.Select(l => new Column(l))], Enumerable.Range(1, Days).Select(Row))}
            <p>{PlanWords.Then}</p></section>
            </main>
            """));
    }

    /// <summary>The plan in a sentence.</summary>
    /// <param name="plan">The plan.</param>
    public static string Title(TestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Written.Sentence(
            $"Three nights at {plan.SetC:0.#} °C by {plan.HeaterW / 1000:0.0} kW of heater, when it is {plan.NightC:0} °C or colder outside,",
            $"tell what this house loses");
    }

    private static IReadOnlyList<Cell> Row(int day) => [day == 1 ? "side by side" : Written.Number(day), .. Enumerable.Repeat((Cell)"", PlanWords.Line.Count - 1)];

    private static Picture Picture(TestPlan plan)
    {
        var house = plan.House;
        var section = HouseSize.Of(house).Section;
        (double X, double Y)[] cover = section is null
            ? [(0, 0), (0, house.EavesM), (house.WidthM / 2, house.RidgeM), (house.WidthM, house.EavesM), (house.WidthM, 0)]
            : [.. section.Cover.Select(p => (p.X, p.Z))];
        var sheet = new Sheet();
        var frame = new SheetFrame(sheet, [.. cover, (-OutM - 0.4, 0), (house.WidthM + 0.6, 0)], Width, Height);
        frame.Line("wall", cover);
        frame.Line("ground", [(-OutM - 0.4, 0), (house.WidthM + 0.6, 0)]);
        var middle = house.WidthM / 2;
        var plants = Math.Min(1, 0.5 * house.EavesM);
        frame.Line("signal", [(middle, house.RidgeM), (middle, plants)]);
        frame.Circle("full", (middle, plants), 0.06);
        frame.Label("1", (middle + 0.25, plants));
        frame.Closed("piece", [(-OutM - 0.2, 1.55), (-OutM, 1.75), (-OutM + 0.2, 1.55)]);
        frame.Circle("full", (-OutM, 1.45), 0.06);
        frame.Line("measure", [(-OutM, 0), (-OutM, 1.4)]);
        frame.Label("2", (-OutM + 0.25, 1.4));
        frame.Closed("piece", [(middle + 0.5, 0), (middle + 0.8, 0), (middle + 0.8, 0.35), (middle + 0.5, 0.35)]);
        frame.Label("3", (middle + 0.65, 0.55));
        frame.Closed("piece", [(house.WidthM + 0.2, 0.3), (house.WidthM + 0.4, 0.3), (house.WidthM + 0.4, 0.5), (house.WidthM + 0.2, 0.5)]);
        frame.Line("wire", [(middle + 0.8, 0.1), (house.WidthM + 0.3, 0.1), (house.WidthM + 0.3, 0.3)]);
        frame.Label("4", (house.WidthM + 0.3, 0.75));
        frame.Bar();
        return new("sensors", "Where loggers, heater and meter stand, seen from the end", PlanWords.Sensors, sheet.Width, sheet.Height, sheet.Body, Markup.None);
    }

    private static Markup List(string title, IReadOnlyList<string> sentences) => Markup.Of($"""
        <section><h2>{title}</h2><ul>{sentences.Select(s => Markup.Of($"<li>{PlainText.Sentence(s)}</li>"))}</ul></section>

        """);
}
