using System.Text;
using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>Builds <c>report.html</c>: one file that asks no other for anything and reads in full without script.</summary>
internal static class ReportPage
{
    private const int LargestBytes = 950_000;
    private const int MostDetailed = 60;

    /// <summary>The page; layouts of the front are told in full as far as the page stays under its size.</summary>
    /// <param name="run">The run.</param>
    /// <param name="tell">Takes a sentence for each part that could not be made; the page says it in its place.</param>
    public static string Of(StoredRun run, Action<string> tell)
    {
        for (var most = MostDetailed; ; most /= 2)
        {
            var told = new List<string>();
            var page = Build(run, Detailed(run.Judgement, most), told);
            if (most == 0 || Encoding.UTF8.GetByteCount(page) <= LargestBytes)
                told.ForEach(tell);
            if (most == 0 || Encoding.UTF8.GetByteCount(page) <= LargestBytes)
                return page;
        }
    }

    /// <summary>What is left to say where the page itself could not be made.</summary>
    public static string Bare(StoredRun run, IReadOnlyList<string> unmade) => Markup.Of($"""
        <!DOCTYPE html>
        <html lang="en">
        <head><meta charset="utf-8"><title>{PlainText.Name(run.Scenario.Name)}: heat for the greenhouse</title></head>
        <body><h1>{PlainText.Sentence(run.Judgement.Answer)}</h1>
        <p>This page is not whole; the tables beside it may be.</p>
        <ul>{unmade.Select(u => Markup.Of($"<li>{PlainText.Sentence(u)}</li>"))}</ul></body>
        </html>

        """).Text;

    // The picks always; of the front, the best ranked.
    private static HashSet<int> Detailed(Judgement judgement, int most) =>
    [
        .. PickNames.Of(judgement).Select(p => p.Layout.Rank),
        .. judgement.Front.Where(r => r > 0).Order().Take(most),
    ];

    private static string Build(StoredRun run, HashSet<int> detailed, List<string> unmade)
    {
        Markup Part(string name, Func<Markup> make)
        {
            try
            {
                return make();
            }
            catch (Exception e) when (e is not (InputException or OutOfMemoryException))
            {
                unmade.Add(Unmade.Sentence($"The part '{name}' of the page", e));
                return Markup.Of($"<p class=\"banner\" role=\"note\">{unmade[^1]}</p>\n");
            }
        }

        var judgement = run.Judgement;
        var first = PickNames.Of(judgement) is [var pick, ..] ? pick : default;
        Markup OfFirst(string name, Func<JudgedLayout, Markup> make) => first.Layout is { } layout ? Part(name, () => make(layout)) : Markup.None;

        Markup[] sections =
        [
            Part("Picks", () => PicksSection.Of(run)),
            OfFirst("Shopping list", l => ShoppingSection.Of(l, first.Names, run.Scenario.Currency)),
            Part("What to build first", () => MoneySection.Stages(run)),
            OfFirst("Water and control", SchemeSection.Of),
            OfFirst("What to dial in", SettingsSection.Of),
            OfFirst("Wiring", WiringSection.Of),
            OfFirst("What can hurt you", CautionsSection.Of),
            Fold.Of("Papers for building and running it: what to try, enquiries, log sheet, upkeep", [
                OfFirst("Papers", l => PapersSection.Of(l, run.Scenario)),
                OfFirst("Looking after it", l => UpkeepSection.Of(l, run.Scenario)),
            ]),
            Fold.Of("Why not cheaper, and what a little more buys", [
                Part("Cost against frost", () => FrontSection.Of(run, detailed)),
                Part("What more money buys", () => MoneySection.Purchases(run)),
            ]),
            Fold.Of("What each way is worth", [
                Part("Is it worth it?", () => CompareSection.Of(run)),
                Part("Which choice matters", () => SwapsSection.Of(run)),
            ]),
            Fold.Of("The hardest week, and what if it gets worse", [
                Part("The hardest week", () => WeekSection.Of(run)),
                Part("What if", () => WhatIfSection.Of(run)),
            ]),
            Fold.Of("How sure: what is in doubt, other winters, checks", [
                Part("How sure?", () => DoubtsSection.Of(run)),
                Part("Unseen winters", () => UnseenSection.Of(run)),
                OfFirst("Checks", l => ChecksSection.Of(l, run)),
            ]),
            Fold.Of("Winters and heat", [
                Part("Winters", () => WintersSection.Of(run)),
                Part("Heat", () => HeatSection.Of(judgement)),
            ]),
            Fold.Of("Layouts in full, and how they were found", [
                Part("Layouts in full", () => LayoutsSection.Of(run, detailed)),
                Part("How it was found", () => MethodSection.Of(run)),
            ]),
        ];
        return PageShell.Of($"{PlainText.Name(run.Scenario.Name)}: heat for the greenhouse", "Skip to the picks", run.ProgramVersion, Markup.Of($"""
            {Part("Answer", () => AnswerSection.Of(run))}{Part("On this page", () => Contents(run, first.Layout))}<main id="content" tabindex="-1">
            <p class="screen"><button type="button" id="all" hidden>Open everything, to read or to print all of it</button></p>
            {sections}</main>
            """));
    }

    private static Markup Contents(StoredRun run, JudgedLayout? first)
    {
        var judgement = run.Judgement;
        var links = new (string Id, string Words, bool Shown)[]
        {
            ("picks", "Picks", true),
            ("shopping", "Shopping list", first is not null),
            ("stages", "What to build first", run.Weighing.Stages.Count > 0),
            ("settings", "What to dial in", first?.Settings.Count > 0),
            ("wiring", "Wiring", first?.Wires.Count > 0),
            ("cautions", "What can hurt you", first?.Cautions.Count > 0),
            ("papers", "Papers", first?.Papers.Log.Count > 0),
            ("upkeep", "Looking after it", first?.Upkeep.Count > 0 || first?.Wears.Count > 0),
            ("front", "Cost against frost", true),
            ("next", "What more money buys", true),
            ("compare", "Is it worth it?", run.Weighing.Comparisons.Count > 0),
            ("swaps", "Which choice matters", run.Weighing.Picks.Any(p => p.Swaps.Count > 0)),
            ("week", "The hardest week", run.Weighing.Picks.Count > 0),
            ("what-if", "What if it gets worse", run.Weighing.Picks.Any(p => p.WhatIfs.Count > 0)),
            ("doubts", "How sure?", true),
            ("unseen", "Unseen winters", run.Weighing.Picks.Any(p => p.Unseen is not null)),
            ("checks", "Checks", first?.Checks.Count > 0),
            ("winters", "Winters", true),
            ("heat", "Heat", true),
            ("layouts", "Layouts in full", judgement.Front.Any(r => r > 0) || first is not null),
            ("method", "How it was found", true),
        };
        return Markup.Of($"""
            <nav aria-label="On this page"><ul>{links.Where(l => l.Shown).Select(l => Markup.Of($"""<li><a href="#{l.Id}">{l.Words}</a></li>"""))}</ul></nav>

            """);
    }
}
