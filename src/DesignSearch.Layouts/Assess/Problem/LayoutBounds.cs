using System.Collections.Concurrent;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Search.Space;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Assess.Problem;

/// <summary>
/// Bounds of a box of layouts. The skin of the house acts one way (<see cref="BestSkin"/>), so one simulation with it at its best within the
/// box bounds frost and electricity of all its layouts. Everything else (set-points, stores, collectors, heaters) may act either way and is taken one
/// level at a time.
/// </summary>
/// <param name="assessor">Prices, checks and simulates.</param>
/// <param name="space">The layouts there are.</param>
internal sealed class LayoutBounds(LayoutAssessor assessor, LayoutSpace space)
{
    // What rounding to the cent, and of hours to the tenth, can do to a sum.
    private const double Cents = 0.1;
    private const double LabourTenth = 0.11;
    private const int MostKept = 500_000;

    private readonly int[] plain = [.. SkinChoices.Plain.Select(assessor.Scenario.Systems.Choices.IndexOf)];
    private readonly int[] skin = [.. SkinChoices.All.Select(assessor.Scenario.Systems.Choices.IndexOf)];
    private readonly int cover = assessor.Scenario.Systems.Choices.IndexOf(SkinChoices.NightCover);
    private readonly ConcurrentDictionary<PointKey, Costs> costs = new();
    private readonly BestSkin skins = new(assessor.Scenario);
    private readonly Lazy<Costs[][]> added = new(() => Added(assessor, space));

    // Build price, and cost over the years without electricity; whether every check passes that the plain lines cannot change.
    private readonly record struct Costs(double Build, double Life, bool Passes);

    /// <summary>One entry a variable: whether it acts one way.</summary>
    public IReadOnlyList<bool> ActsOneWay { get; } = [.. assessor.Scenario.Systems.Choices.All.Select(SkinChoices.All.Contains)];

    private double Slack => Cents + (LabourTenth * (double)assessor.Scenario.Money.LabourRatePerHour);

    /// <summary>Least cost without electricity; false where budget or another check that needs no season refuses every layout of the box.</summary>
    public bool Cheaply(LevelBox box, Span<double> bounds)
    {
        var (build, life, passes) = Least(box);
        bounds[0] = life;
        bounds[1] = 0;
        return passes && build <= (double)assessor.Scenario.Money.Budget;
    }

    /// <summary>Least cost with electricity, and frost, by one simulation.</summary>
    public void BySimulation(LevelBox box, Span<double> bounds)
    {
        double[] point = [.. box.Low];
        var built = LayoutBuilder.Build(assessor.Scenario, space.At(point));
        var best = built with { Installation = built.Installation with { House = Best(box) } };
        var outcomes = assessor.Simulate([best])[0];
        var terms = assessor.Scenario.Money;
        var tariff = terms.Night is { } night && night.PerKwh < terms.TariffPerKwh ? night.PerKwh : terms.TariffPerKwh;
        var running = Pricer.Running(assessor.Weighted(outcomes, (o, _) => o.StandbyKwh), 0, 0, terms with { TariffPerKwh = tariff, Night = null });
        bounds[0] = Least(box).Life + Math.Max(0, (double)running.PresentValue - Slack);
        bounds[1] = assessor.Weighted(outcomes, (o, _) => o.FrostDegreeHoursKh);
    }

    private Costs Least(LevelBox box)
    {
        // Each plain line at its cheapest, wherever that is.
        double build = 0, life = -Slack;
        for (var i = 0; i < plain.Length; i++)
        {
            double leastBuild = double.PositiveInfinity, leastLife = double.PositiveInfinity;
            for (var level = box.Low[plain[i]]; level <= box.High[plain[i]]; level++)
            {
                leastBuild = Math.Min(leastBuild, added.Value[i][level].Build);
                leastLife = Math.Min(leastLife, added.Value[i][level].Life);
            }

            (build, life) = (build + leastBuild, life + leastLife);
        }

        if (!Enumerable.Range(0, box.Low.Count).All(i => ActsOneWay[i] || box.IsSingle(i)))
            return new(build, Math.Max(0, life), true);

        // The rest, for each cover in the box.
        var (point, rest) = (Base(box), new Costs(double.PositiveInfinity, double.PositiveInfinity, false));
        for (var level = box.Low[cover]; level <= box.High[cover]; level++)
        {
            point[cover] = level;
            var one = costs.Count > MostKept ? Priced(point) : costs.GetOrAdd(SearchSpace.KeyOf(point), _ => Priced(point));
            if (one.Passes)
                rest = new(Math.Min(rest.Build, one.Build), Math.Min(rest.Life, one.Life), true);
        }

        return new(build + rest.Build - Cents, Math.Max(0, life + rest.Life), rest.Passes);
    }

    private double[] Base(LevelBox box)
    {
        double[] point = [.. box.Low];
        foreach (var i in plain)
            point[i] = -1;
        return point;
    }

    // Where a plain choice stands at −1 it is left out, whether or not the scenario offers that.
    private Costs Priced(double[] point)
    {
        var layout = Without(point);
        var priced = assessor.Price(layout);
        var others = assessor.Checks(priced, []).All(c => c.Passed || c.Id == PlantRules.Budget.Id || c.Id == PlantRules.BuildHours.Id);
        return CostsOf(assessor, priced) with { Passes = others };
    }

    private Layout Without(double[] point)
    {
        var scenario = assessor.Scenario;
        return Layout.Of([.. point.Select((level, i) => level < 0 ? ChoiceValue.None : scenario.Choices[i].Levels[(int)level])], scenario.Systems.Choices);
    }

    private HouseNumbers Best(LevelBox box) => skins.Of([.. skin.Select(i => (int[])[.. Enumerable.Range(box.Low[i], box.High[i] - box.Low[i] + 1)])]);

    // What each level of a plain choice adds to the bare house, and so to any layout.
    private static Costs[][] Added(LayoutAssessor assessor, LayoutSpace space)
    {
        var scenario = assessor.Scenario;
        var bare = Layout.Bare(scenario.Systems.Choices);
        return [.. SkinChoices.Plain.Select(choice => scenario.LevelsOf(choice).Select(l => CostsOf(assessor, assessor.Price(bare.With(choice, l)))).ToArray())];
    }

    private static Costs CostsOf(LayoutAssessor assessor, PricedLayout priced) => new(
        (double)priced.BuildPrice,
        (double)priced.LifeCostWithoutCurrent(assessor.Scenario.Money),
        true);
}
