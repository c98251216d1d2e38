using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Tests;

/// <summary>A small scenario whose cheapest layout that holds is not sure: its hard winter comes every third year, and heaters of four strengths may be bought.</summary>
public sealed class SureSample : IDisposable
{
    private readonly WeighedSample all;

    public SureSample() : this(0.9)
    {
    }

    internal SureSample(double certainty, int winters = 40, Func<Scenario, Scenario>? moved = null)
    {
        all = new(
            moved ?? (read => read),
            ("return_years = 10", "return_years = 3"), ("weight = 0.1", "weight = 0.333"), ("weight = 0.9", "weight = 0.667"),
            ("lowest_known_c = -18.5\n", ""),
            ("""heater = ["none", "fan-heater-1kw", "fan-heater-2kw"]""", """heater = ["none", "fan-heater-1kw", "fan-heater-1500", "fan-heater-2kw", "fan-heater-3kw"]"""),
            ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = \"none\""),
            ("unseen_winters = 20", FormattableString.Invariant($"certainty = {certainty}\nunseen_winters = {winters}")));
        Found = Pick(true, 2);
        Judged = new Judge(all.Assessor).Of(all.Result, all.Space, [], [], Found);
    }

    /// <summary>The scenario searched to the end.</summary>
    public WeighedSample All => all;

    /// <summary>What was found.</summary>
    public SureFound? Found { get; }

    /// <summary>The judgement with it.</summary>
    public Judgement Judged { get; }

    public SureFound? Pick(bool isExact, int threads) => new Weigher(all.Assessor, threads, 1).Sure(all.Judgement, all.Tried, all.Space, isExact);

    /// <summary>Every layout that holds, the cheapest first.</summary>
    public IReadOnlyList<(Layout Layout, double Cost)> Holders =>
        [.. all.Tried.Where(t => t.Evaluation.TotalViolation == 0 && t.Evaluation.Objectives[1] == 0).Select(t => (all.Space.At(t.Point), t.Evaluation.Objectives[0])).OrderBy(t => t.Item2)];

    public void Dispose() => all.Dispose();
}
