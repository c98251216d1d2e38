using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>What one wants to know in ten seconds: what to add, how it looks, what it costs, how sure it is and what can hurt most.</summary>
internal static class AnswerFacts
{
    // A heading longer than this is not taken in at a glance: then the layout stands under it.
    private const int MostWords = 20;

    /// <summary>The heading, the facts and the picture.</summary>
    /// <param name="run">The run.</param>
    /// <param name="first">Its first pick, which holds.</param>
    public static Markup Of(StoredRun run, JudgedLayout first) => Markup.Of($"""
        <div class="first"><div>
        {Heading(run, first)}<ul class="facts">
        {Facts(run, first).Select(f => Markup.Of($"<li>{f}</li>\n"))}</ul></div>
        {Picture(first)}</div>

        """);

    private static Markup Heading(StoredRun run, JudgedLayout first)
    {
        var goal = $"To keep {Say.Plain(run.Scenario.FrostLimitC)}\u00A0°C{(first.Plants is { } place ? " " + place.Where : "")}, add";
        var title = PlainText.Name(first.Title);
        return $"{goal} {title}".Split(' ').Length <= MostWords
            ? Markup.Of($"<h1>{goal} {title}.</h1>\n")
            : Markup.Of($"<h1>{goal} this for {Say.Money(first.BuildPrice, run.Scenario.Currency)}:</h1>\n<p class=\"title\">{Say.Capital(title)}.</p>\n");
    }

    private static IEnumerable<Markup> Facts(StoredRun run, JudgedLayout first)
    {
        var (scenario, currency) = (run.Scenario, run.Scenario.Currency);
        var (build, budget) = (Say.Money(first.BuildPrice, currency), Say.Money(scenario.Budget, currency));
        yield return Markup.Of($"""<strong>{build}</strong> to build, of your {budget}. <a href="#shopping">What to buy</a>""");
        var life = Say.Money(first.LifeCost, currency);
        yield return Markup.Of($"""<strong>{life}</strong> over {Say.Count(scenario.Years, "year")}: building, current and wear together{Alone(run)}.""");
        if (first.Chance is { } chance)
        {
            var held = $"{Say.Whole(chance.Held)} of {Say.Whole(chance.Of)}";
            yield return Markup.Of(
                $"""It held in <strong>{held}</strong> other winters, with losses, leaks, sky and all else in doubt drawn anew. <a href="#doubts">How sure?</a>""");
        }

        foreach (var daily in first.Upkeep.Where(u => u.When == Upkeep.EveryDay))
            yield return Markup.Of($"""By hand, {daily.When}: {Say.Small(PlainText.Sentence(daily.What))}{(IsTold(run, first, daily.IfForgotten) ? Forgotten : Markup.None)}""");
        if (first.Cautions.MaxBy(c => c.Harm) is { } worst)
            yield return Markup.Of($"""What can hurt most: <strong>{Say.Small(PlainText.Name(worst.Topic))}</strong>. <a href="#cautions">All dangers</a>""");
    }

    private static readonly Markup Forgotten = Markup.Of($""" <a href="#what-if">If forgotten?</a>""");

    private static bool IsTold(StoredRun run, JudgedLayout layout, Mishap mishap) =>
        mishap != Mishap.None && run.Weighing.Picks.FirstOrDefault(p => p.Rank == layout.Rank)?.WhatIfs.Any(w => w.Mishap == mishap) == true;

    private static string Alone(StoredRun run) => run.Weighing.HeaterAlone is not { } alone ? ""
        : alone.Holds ? $"; a heater alone would cost {Say.Money(alone.LifeCost, run.Scenario.Currency)}"
        : $"; a heater alone does not hold: {Say.Hours(alone.WorstFrostHours, "frost hour")} in the worst winter";

    private static Markup Picture(JudgedLayout first) => ElevationPicture.Of(first) is { } picture
        ? Markup.Of($"""
            <figure class="look">{picture.OnPage()}<figcaption>The greenhouse with what is added, to scale.
            <a href="#drawn">All drawings</a></figcaption></figure>
            """)
        : Markup.None;
}
