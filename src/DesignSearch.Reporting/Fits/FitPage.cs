using System.Globalization;
using DesignSearch.Fitting.Estimate;
using DesignSearch.Layouts.Words;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Page;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Fits;

/// <summary>Builds the page of a fit: the answer first, then the pictures, every night, and what was taken before.</summary>
public static class FitPage
{
    /// <summary>The page.</summary>
    /// <param name="name">Name of the run.</param>
    /// <param name="fit">The fit.</param>
    /// <param name="programVersion">Version that made it.</param>
    public static string Of(string name, FitResult fit, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(fit);
        string[] said = [.. new[] { fit.Refusal, FitPageWords.HeldOut(fit), FitPageWords.Beyond(fit) }.Where(s => s.Length > 0)];
        return PageShell.Of($"{PlainText.Name(name)}: fitted to its log", "Skip to the pictures", programVersion, Markup.Of($"""
            <header><p class="place">{PlainText.Name(name)} · {Written.Joined([.. fit.Log.Files.Select(f => f.Name)])}</p>
            <h1>{PlainText.Sentence(FitPageWords.Answer(fit))}</h1>
            {said.Select(s => Markup.Of($"<p>{PlainText.Sentence(s)}</p>"))}</header>
            <main id="content" tabindex="-1">
            {List("What the log can tell, and what it cannot", fit.Before)}
            {List("What is odd about it", fit.Warnings)}
            <section><h2>Inside, measured and fitted</h2><p>{FitPageWords.AirFinding(fit)}.</p>{FitCharts.Air(fit)}</section>
            {Markup.When(fit.Nights.Any(n => n.Use != NightUse.NotWhole), () => Nights(fit))}
            <section><h2>What was taken before, and what is known now</h2>{FitCharts.Figures(fit)}
            <ul>{fit.Figures.Select(f => Markup.Of($"<li>{PlainText.Sentence(Say.Capital(FitPageWords.Figure(f)))}</li>"))}</ul>
            {Markup.When(fit.SunRefusal.Length > 0, () => Markup.Of($"<p>{PlainText.Sentence(fit.SunRefusal)}</p>"))}
            <p>An error is counted by nights and made 1.7 times as large, since least squares takes the hours of a night for more than they are;
            what the model itself misses, a twentieth, is added, and it is never told as less than a tenth.</p></section>
            </main>
            """));
    }

    private static Markup Nights(FitResult fit) => Markup.Of($"""
        <section><h2>Heat against rise</h2><p>{PlainText.Sentence(FitPageWords.HeatFinding(fit))}. Small dots were left out.</p>{FitCharts.Heat(fit)}</section>
        <section><h2>Night by night</h2><p>{PlainText.Sentence(FitPageWords.MissFinding(fit))}.</p>{FitCharts.Misses(fit)}
        {PageTable.Of(
            "Every night of the log",
            [
                new("evening"), new("outside, °C", true), new("inside, °C", true), new("rise, K", true), new("heat, W", true), new("fitted, °C", true),
                new("fitted without it, °C", true), new("use"),
            ],
            fit.Nights.Select(n => new Cell[]
            {
                n.Evening.ToString("d MMM yyyy", CultureInfo.InvariantCulture), Tenth(n.OutsideC), Tenth(n.InsideC), Tenth(n.RiseK), Written.Number(n.HeatW),
                Tenth(n.PredictedC), Tenth(n.HeldOutC), FitPageWords.Use(n.Use),
            }))}</section>
        """);

    private static string Tenth(double value) => Written.Number(value, 1);

    private static Markup List(string title, IReadOnlyList<string> sentences) => Markup.When(sentences.Count > 0, () => Markup.Of($"""
        <section><h2>{title}</h2><ul>{sentences.Select(s => Markup.Of($"<li>{PlainText.Sentence(s)}</li>"))}</ul></section>
        """));
}
