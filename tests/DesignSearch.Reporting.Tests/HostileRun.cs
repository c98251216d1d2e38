using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Tests;

/// <summary>A run in which every text that a person can write is hostile.</summary>
internal static class HostileRun
{
    public static readonly string[] Texts =
    [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "=1+1",
        "+cmd|' /C calc'!A0",
        "@SUM(A1)",
        "../../x",
        "..\\..\\x",
        new string('w', 10_000),
        "abc\u202Egpj.exe\u200F",
        "nul\0nul\u0007bell",
        "line\r\nbreak,\"comma\"",
        "]]></style></title>&amp;",
        "\uD800 half",
    ];

    /// <summary>The invented run with each of the texts above in turn in every place that takes one.</summary>
    public static StoredRun Make()
    {
        var next = 0;
        string Text() => Texts[next++ % Texts.Length];
        var run = InventedRun.Finished();
        var ranking = run.Judgement.Ranking.Select(l => l with
        {
            Slug = Text(),
            Title = Text(),
            Turning = l.Rank == 3 ? Text() : l.Turning,
            Choices = l.Choices.ToDictionary(c => c.Key, _ => Text()),
            Bill = [.. l.Bill.Select(b => b with { PartId = Text(), Name = Text(), System = Text(), Why = Text(), Where = Text(), Unit = Text() })],
            Checks = [.. l.Checks.Select(c => new Check(c.Id, Text(), c.Passed, c.Margin, Text(), Text()))],
            Settings = [.. l.Settings.Select(s => new Setting(Text(), Text(), Text()))],
            Apart = Text(),
            Wires = [.. l.Wires.Select(w => w with { Device = Text(), Cable = Text(), SwitchedBy = Text(), Stops = Text() })],
            Cautions = [.. l.Cautions.Select(_ => new Caution(Text(), Text()))],
            Papers = new()
            {
                Steps = [.. l.Papers.Steps.Select(_ => new CommissioningStep(Text(), Text(), Text(), Text()))],
                Enquiry = [.. l.Papers.Enquiry.Select(f => new EnquiryFact(f.Trade, Text(), Text()))],
                Log = [.. l.Papers.Log.Select(_ => new LogColumn(Text(), Text()))],
            },
            Winters = [.. l.Winters.Select(w => w with { Winter = Text() })],
        }).ToList();
        return run with
        {
            ProgramVersion = Text(),
            Inputs = [.. Texts.Select(t => new StoredInput(t, t))],
            Search = run.Search with { StoppedInWords = Text(), IsPartial = true },
            Scenario = run.Scenario with
            {
                Name = Text(),
                Description = Text(),
                Currency = Text(),
                PlaceName = Text(),
                Season = Text(),
                House = Text(),
                WeatherSource = Text(),
                Winters = [.. Texts.Select(t => new WinterRecord(t, t, 0.1, 1, -10, 900, 1.5, [t]))],
                Assumptions = [.. Texts.Select(t => new AssumptionRecord(t, double.NaN, t, true, t))],
            },
            Weighing = Hostile(run.Weighing, Text),
            Judgement = run.Judgement with { Answer = Texts[0], Ranking = ranking, Doubts = Texts, NearestMiss = Texts },
        };
    }

    private static Weighing Hostile(Weighing weighing, Func<string> text) => weighing with
    {
        UnseenFrom = text(),
        Picks = [.. weighing.Picks.Select(p => p with
        {
            Unseen = p.Unseen! with { Sentence = text(), Flattery = text() },
            Swaps = [.. p.Swaps.Select(s => s with { Choice = text(), From = text(), To = text(), FailedCheck = text() })],
            Doubts = [.. p.Doubts.Select(d => d with { What = text(), Sentence = text() })],
            Week = p.Week with { Winter = text() },
        })],
        Comparisons = [.. weighing.Comparisons.Select(c => c with { Question = text(), Answer = text(), Ways = [.. c.Ways.Select(w => w with { Name = text(), WhyNone = text(), Best = w.Best is null ? null : w.Best with { Title = text() } })] })],
        Turning = weighing.Turning with { Sentence = text() },
        Purchases = [.. weighing.Purchases.Select(p => p with { Title = text() })],
        Stages = [.. weighing.Stages.Select(s => s with { Adds = text() })],
        CheckCosts = [.. weighing.CheckCosts.Select(c => c with { Check = text(), Title = text(), Sentence = text() })],
    };
}
