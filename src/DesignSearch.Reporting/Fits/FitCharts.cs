using System.Globalization;
using DesignSearch.Fitting.Estimate;
using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Fits;

/// <summary>The four pictures of a fit.</summary>
internal static class FitCharts
{
    private const double Width = 960;
    private const int MostDays = 14;

    /// <summary>Inside as measured, as fitted, and as a fit has it that did not see the night; in stretches of a fortnight.</summary>
    public static IEnumerable<Markup> Air(FitResult fit)
    {
        var (log, part) = (fit.Log, 0);
        for (var from = 0; from < log.Hours; from += 24 * MostDays)
        {
            int[] hours = [.. Enumerable.Range(from, Math.Min(24 * MostDays, log.Hours - from))];
            if (hours.Length < 12 && part > 0)
                yield break;
            var y = FitPlot.Around(hours.SelectMany(h => new[] { log.InsideC[h], log.OutsideC[h], fit.PredictedC[h] }), 1);
            var plot = new FitPlot(Width, 300, (from, from + hours.Length), y, "air, °C");
            for (var day = 0; day <= hours.Length / 24; day++)
                plot.TickX(from + (24 * day), log.Start.AddHours(from + (24 * day)).ToString("d MMM", CultureInfo.InvariantCulture));
            plot.Line("outside", hours.Select(h => (h + 0.5, log.OutsideC[h])));
            plot.Line("inside", hours.Select(h => (h + 0.5, log.InsideC[h])));
            plot.Line("tank", hours.Select(h => (h + 0.5, fit.PredictedC[h])));
            plot.Line("limit", hours.Select(h => (h + 0.5, fit.HeldOutC[h])));
            plot.Key(("inside", "measured"), ("tank", "fitted"), ("limit", "fitted without that night"), ("outside", "outside"));
            yield return plot.Finish(FormattableString.Invariant($"air{part++}"), FitPageWords.AirFinding(fit));
        }
    }

    /// <summary>Heat of the nights against their rise, a dot a night, with the fit's line and band.</summary>
    public static Markup Heat(FitResult fit)
    {
        NightRow[] known = [.. fit.Nights.Where(n => n.Use != NightUse.NotWhole)];
        NightRow[] heated = [.. known.Where(n => n.Use == NightUse.Fitted && n.HeatW > 0)];
        var plot = new FitPlot(Width, 340, (0, Math.Max(5, known.Max(n => n.RiseK) + 1)), (0, Math.Max(100, known.Max(n => n.HeatW) * 1.1)), "heat of the night, mean W");
        plot.Figures();
        plot.NameX("inside less outside, mean of the night, K");
        if (fit.IsLearnt && heated.Length >= 2)
        {
            // The line runs through the nights as the fit has them; a house that loses more rises less on the same heat.
            var (rise, heat) = (heated.Average(n => n.PredictedC - n.OutsideC), heated.Average(n => n.HeatW));
            var (slope, bare) = Slope(fit, heated, rise, heat);
            (double X, double Low, double High)[] band = [.. Enumerable.Range(0, 21).Select(i => Math.Max(0, bare) + (i / 20.0 * (known.Max(n => n.RiseK) - Math.Max(0, bare))))
                .Select(x => (x, Math.Max(0, slope * fit.Loss.Low / fit.Loss.Value * (x - bare)), Math.Max(0, slope * fit.Loss.High / fit.Loss.Value * (x - bare))))];
            plot.Band(band);
            plot.Line("inside", band.Select(b => (b.X, Math.Max(0, slope * (b.X - bare)))));
        }

        foreach (var night in known)
            plot.Dot(night.RiseK, night.HeatW, night.Use == NightUse.Other, FitPageWords.Night(night));
        return plot.Finish("heat", FitPageWords.HeatFinding(fit));
    }

    /// <summary>Measured less fitted, night by night.</summary>
    public static Markup Misses(FitResult fit)
    {
        NightRow[] known = [.. fit.Nights.Where(n => n.Use != NightUse.NotWhole)];
        var y = FitPlot.Around(known.Select(n => n.MissK).Append(-1).Append(1), 0.3);
        var first = fit.Nights[0].Evening;
        var plot = new FitPlot(Width, 240, (-0.5, (fit.Nights[^1].Evening - first).TotalDays + 0.5), y, "measured less fitted, mean of the night, K");
        var every = Math.Max(1, fit.Nights.Count / 14);
        for (var n = 0; n < fit.Nights.Count; n += every)
            plot.TickX((fit.Nights[n].Evening - first).TotalDays, fit.Nights[n].Evening.ToString("d MMM", CultureInfo.InvariantCulture));
        plot.Line("limit", [(-0.5, 0), ((fit.Nights[^1].Evening - first).TotalDays + 0.5, 0)]);
        foreach (var night in known)
            plot.Dot((night.Evening - first).TotalDays, night.MissK, night.Use == NightUse.Other, FitPageWords.Night(night));
        return plot.Finish("miss", FitPageWords.MissFinding(fit));
    }

    /// <summary>What was taken before and what is left open now, each against its usual value.</summary>
    public static Markup Figures(FitResult fit)
    {
        var figures = fit.Figures;
        var (low, high) = (Math.Log(0.1), Math.Log(10.0));
        var plot = new FitPlot(Width, 60 + (54 * figures.Count), (low, high), (0, figures.Count), "");
        foreach (var times in new[] { 0.2, 0.5, 1, 2, 5 })
            plot.TickX(Math.Log(times), FormattableString.Invariant($"{times} ×"));
        for (var i = 0; i < figures.Count; i++)
        {
            var (figure, y) = (figures[i], figures.Count - i - 0.35);
            double Of(double value) => Math.Clamp(Math.Log(value / figure.Prior.Usual), low, high);
            plot.Words(figure.Prior.Name, low, y + 0.02);
            plot.Bar(Of(figure.PriorLow), Of(figure.Prior.Usual), Of(figure.PriorHigh), y - 0.15, isPrior: true);
            plot.Bar(Of(figure.Low), Of(figure.Value), Of(figure.High), y - 0.4, isPrior: !figure.IsLearnt);
        }

        plot.Key(("bare", "before the log"), ("inside", "after it"));
        return plot.Finish("priors", FitPageWords.PriorFinding);
    }

    private static (double Slope, double Bare) Slope(FitResult fit, NightRow[] heated, double rise, double heat)
    {
        var (along, square) = (0.0, 0.0);
        foreach (var night in heated)
        {
            along += (night.PredictedC - night.OutsideC - rise) * (night.HeatW - heat);
            square += Math.Pow(night.PredictedC - night.OutsideC - rise, 2);
        }

        // Nights of one and the same heat draw no line: then the drawing's loss, as fitted, does.
        var steady = fit.DrawnWPerK * fit.Loss.Value;
        var slope = square > 1 ? Math.Clamp(along / square, 0.5 * steady, 1.5 * steady) : steady;
        return (slope, rise - (heat / slope));
    }
}
