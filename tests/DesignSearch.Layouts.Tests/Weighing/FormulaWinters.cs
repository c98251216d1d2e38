using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Tests;

/// <summary>Winters of sines, so that what hangs on them moves with no other way of making weather.</summary>
internal static class FormulaWinters
{
    private const int WeekHours = 168;

    /// <summary>A typical winter of 1 °C with nights of -5 °C, and a hard one 9 K colder.</summary>
    public static WinterSet Of(Scenario scenario)
    {
        var made = DesignWinters.Of(scenario, false);
        return WinterSet.Of(scenario, made.Select((w, i) => (Formed(w.Winter, i == 0 ? 0 : 9), w.Weight)));
    }

    /// <summary>So many, each somewhat colder than the last.</summary>
    public static IReadOnlyList<Winter> Drawn(Scenario scenario, int count)
    {
        var first = DesignWinters.Of(scenario, false).First().Winter;
        return [.. Enumerable.Range(0, count).Select(i => Formed(first, 13.0 * i / count) with { Name = "formula" })];
    }

    private static Winter Formed(Winter made, double colderK)
    {
        double[] By(Func<int, double> formula) => [.. Enumerable.Range(0, made.Hours).Select(formula)];
        double Sine(double hour, double period) => Math.Sin(2 * Math.PI * hour / period);
        double Up(int h) => Math.Max(0, Math.Cos(made.SunZenithDeg[h] * Math.PI / 180));
        double Clear(int h) => 0.45 + (0.3 * Sine(h, 131));
        double Air(int h) => 1 - colderK + (6 * Sine(h - 9, 24)) + (3 * Sine(h, 171));
        return made with
        {
            AirC = By(Air),
            DewPointC = By(h => Air(h) - 2.5),
            SkyC = By(h => Air(h) - 9 - (7 * Clear(h))),
            WindMPerS = By(h => 1.6 + Sine(h, 53)),
            DiffuseWPerM2 = By(h => 250 * Up(h)),
            BeamNormalWPerM2 = By(h => Up(h) > 0.05 ? 500 * Clear(h) : 0),
            GlobalWPerM2 = By(h => (250 * Up(h)) + (Up(h) > 0.05 ? 500 * Clear(h) * Up(h) : 0)),
            GroundReflectance = By(_ => 0.25),
            Ground = new GroundClimate(8, 9, 40),
            StressWeek = made.StressWeek is null ? null : new HourSpan(made.Hours - WeekHours - 24, WeekHours),
            Remarks = [],
        };
    }
}
