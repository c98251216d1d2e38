using System.Globalization;
using DesignSearch.Fitting.Estimate;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Reporting.Fits;

/// <summary>What the page of a fit, and the console, say of it.</summary>
public static class FitPageWords
{
    internal const string PriorFinding = "What was taken of each figure before the log, and what is left open after it";

    private const string Drawn = "from the drawing, not from the log.";
    private const string Hardly = "hardly learnt: the log narrows it little.";
    private const double Percent = 100;

    private static string Off(double off) => Written.Sentence($"{Percent * Math.Abs(off):0} % {(off > 0 ? "more" : "less")} than");

    /// <summary>The answer first.</summary>
    /// <param name="fit">The fit.</param>
    public static string Answer(FitResult fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (!fit.IsLearnt)
            return "This log does not tell the loss of the house: it stays the drawing's.";
        var off = fit.Loss.Value - 1;
        return Written.Sentence(
            $"This house loses {(Math.Abs(off) < 0.005 ? "as much as" : Off(off))}",
            $"its drawing: {fit.DrawnWPerK * fit.Loss.Value:0} W per degree instead of {fit.DrawnWPerK:0}, as this heater sees it;",
            $"19 of 20 times between {fit.DrawnWPerK * fit.Loss.Low:0} and {fit.DrawnWPerK * fit.Loss.High:0}.");
    }

    /// <summary>A figure with what is left open.</summary>
    /// <param name="figure">The figure.</param>
    public static string Figure(FigureFound figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var scale = figure.Prior.Unit.StartsWith("kJ", StringComparison.Ordinal) ? 0.001 : 1;
        string Of(double value) => Written.Formatted(value * scale, value * scale >= 10 ? "0" : value * scale >= 3 ? "0.0" : "0.00");
        var unit = figure.Prior.Unit.Length > 0 ? " " + figure.Prior.Unit : " times";
        return $"{figure.Prior.Name}: {Of(figure.Value)}{unit}, 19 of 20 times between {Of(figure.Low)} and {Of(figure.High)}; "
            + (figure.IsLearnt ? "learnt." : figure == FigureFound.Unlearnt(figure.Prior) ? Drawn : Hardly)
            + $" Before: {Of(figure.Prior.Usual)}, between {Of(figure.PriorLow)} and {Of(figure.PriorHigh)} ({figure.Prior.Why}).";
    }

    /// <summary>What the range does not count; empty where nothing was learnt.</summary>
    /// <param name="fit">The fit.</param>
    public static string Beyond(FitResult fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return !fit.IsLearnt ? "" : Written.Sentence(
            $"The range allows for what a program gets wrong: ten houses of another model, tried on purpose, were missed",
            $"by {Percent * FitResult.OtherModelsMissed:0} % (root of the mean square) and lay inside it. Where a strong fan stirs the air",
            $"all night the loss is more likely too high than too low, by {Percent * FitResult.StirredTooHigh:0} % in a trial;",
            $"the heat needed near this temperature is not.");
    }

    /// <summary>How well it predicts what it did not see; empty where it was not tried.</summary>
    /// <param name="fit">The fit.</param>
    public static string HeldOut(FitResult fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return double.IsNaN(fit.HeldOutRmsK) ? "" : Written.Sentence(
            $"Nights that a fit did not see it predicts to {fit.HeldOutRmsK:0.0} K, root of the mean square of their hours",
            $"(each third of the nights left out in turn).");
    }

    /// <summary>What the file does.</summary>
    /// <param name="path">The file.</param>
    public static string InForce(string path) =>
        $"Wrote {path}: check, search, simulate and report of this run use it from now on. Delete it to go back to the drawing.";

    internal static string AirFinding(FitResult fit) => fit.IsLearnt
        ? Written.Sentence($"Air inside as measured and as fitted; nights that were held out are met to {fit.HeldOutRmsK:0.0} K")
        : "Air inside as measured, and as the drawing's house has it";

    internal static string HeatFinding(FitResult fit) => fit.IsLearnt
        ? Written.Sentence(
            $"Heat against rise: a dot a night, the fit's line through them and its band;",
            $"the {fit.DrawnWPerK * fit.Loss.Value:0} W per degree above are with the films that U-values are stated for")
        : "Heat against rise, a dot a night";

    internal static string MissFinding(FitResult fit)
    {
        NightRow[] fitted = [.. fit.Nights.Where(n => n.Use == NightUse.Fitted)];
        return fitted.Length == 0
            ? "Measured less fitted, night by night"
            : Written.Sentence($"Measured less fitted, night by night: {fitted.Min(n => n.MissK):0.0} to {fitted.Max(n => n.MissK):0.0} K");
    }

    internal static string Use(NightUse use) => use switch
    {
        NightUse.Fitted => "fitted",
        NightUse.Other => "another house: left out",
        _ => "not whole: left out",
    };

    internal static string Night(NightRow night) => Written.Sentence(
        $"{night.Evening.ToString("d MMMM", CultureInfo.InvariantCulture)}: {night.HeatW:0} W, {night.RiseK:0.0} K over outside,",
        $"{night.MissK:0.0} K off the fit{(night.Use == NightUse.Other ? ", left out" : "")}");
}
