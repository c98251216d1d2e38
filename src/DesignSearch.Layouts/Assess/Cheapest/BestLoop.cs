using System.Collections.Concurrent;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Physics;
using DesignSearch.Search.Proof;
using DesignSearch.Season;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>
/// Solar plants of which none of a set is better than all. What is open between collector and tank is without loss; of open collectors every
/// number is the best. Less loss of the tank and a stronger release are not better always (a bare tank is a barrel, and a strong release spends
/// on a mild night what a cold one wants), so the ends of both stand beside each other, and while much is open a release that waits for the last moment.
/// </summary>
/// <param name="assessor">Scenario.</param>
/// <param name="space">Points to layouts.</param>
internal sealed class BestLoop(LayoutAssessor assessor, Problem.LayoutSpace space)
{
    private static readonly Choice[] Stores = [SolarChoices.Tank, SolarChoices.Jacket, SolarChoices.Release, SolarChoices.ReleaseCount];
    private static readonly Choice[] Ways = [SolarChoices.LoopPump, SolarChoices.Pipe, SolarChoices.Protection];
    private static readonly Choice[] Hydraulics =
        [SolarChoices.Collector, SolarChoices.CollectorCount, SolarChoices.Protection, SolarChoices.LoopPump, SolarChoices.Pipe, SolarChoices.TiltDeg];

    private readonly ChoiceSet choices = assessor.Scenario.Systems.Choices;
    private readonly int[] places = [.. SolarChoices.All.Select(assessor.Scenario.Systems.Choices.IndexOf)];
    private readonly ConcurrentDictionary<string, (IReadOnlyList<SolarPart>, bool)> known = new(StringComparer.Ordinal);

    /// <summary>The plants, as <see cref="Optimum"/> tells them apart.</summary>
    public (IReadOnlyList<SolarPart> Plants, bool IsWide) Of(LevelSets set) =>
        known.GetOrAdd(string.Join('/', places.Select(i => string.Join(',', set[i].ToArray()))), _ => Make(set));

    private bool IsSingle(LevelSets set, params ReadOnlySpan<Choice> all)
    {
        foreach (var choice in all)
        {
            if (!set.IsSingle(choices.IndexOf(choice)))
                return false;
        }

        return true;
    }

    private (IReadOnlyList<SolarPart>, bool) Make(LevelSets set)
    {
        var loops = Points(set, [SolarChoices.Collector, SolarChoices.CollectorCount, .. Stores]).ToList();
        SolarLoop first = loops[0].Loop;
        SolarPart[] parts = [.. loops.Select(Numbers)];
        var (water, pipe) = (IsSingle(set, SolarChoices.Protection), IsSingle(set, SolarChoices.Pipe, SolarChoices.Insulation));
        var stores = IsSingle(set, Stores);
        var heat = stores && pipe && IsSingle(set, Hydraulics);
        var isKnown = water && pipe;
        var run = isKnown ? parts[0].PipeRun : Least(Points(set, [SolarChoices.Pipe, SolarChoices.Insulation]).Select(Numbers));
        var one = parts[0] with { Collector = Best(parts), PipeRun = run };
        if (!IsSingle(set, Hydraulics))
            one = one with { Collector = one.Collector with { FlowKgPerS = loops.Max(l => l.Loop.Flow.WantedKgPerS) } };
        if (!water)
            one = one with { Collector = one.Collector with { ExchangerEffectiveness = 1, FluidJPerKgK = Water.HeatJPerKgK, EmptyAtRest = true } };
        if (heat)
            return ([one], false);
        var open = one with
        {
            Collector = one.Collector with { LockOutC = CollectorNumbers.NoLockOutC },
            Tank = new(parts.Max(p => p.Tank.WaterKg), 0, loops.Max(l => l.Loop.Tank.MaxTemperatureC)),
            Release = one.Release with { ElectricW = Points(set, [.. Ways, SolarChoices.Release, SolarChoices.ReleaseCount]).Max(l => Numbers(l).Release.ElectricW) },
        };
        double[] losses = [.. new[] { parts.Min(p => p.Tank.LossWPerK), parts.Max(p => p.Tank.LossWPerK) }.Distinct()];
        double[] sizes = [.. new[] { parts.Min(p => p.Tank.WaterKg), parts.Max(p => p.Tank.WaterKg) }.Distinct()];
        SolarPart[] tanks = [.. sizes.SelectMany(s => losses.Select(l => open with { Tank = open.Tank with { WaterKg = s, LossWPerK = l } }))];
        return (tanks, !stores);
    }

    private static PipeRunNumbers Least(IEnumerable<SolarPart> parts) => parts.Select(p => p.PipeRun).Aggregate((a, b) => new(
        Math.Min(a.OutLossWPerK, b.OutLossWPerK), Math.Min(a.BackLossWPerK, b.BackLossWPerK),
        Math.Min(a.OutCapacityJPerK, b.OutCapacityJPerK), Math.Min(a.BackCapacityJPerK, b.BackCapacityJPerK)));

    private static CollectorNumbers Best(SolarPart[] parts)
    {
        var best = parts[0].Collector;
        foreach (var part in parts)
        {
            var other = part.Collector;
            best = best with
            {
                AreaM2 = Math.Max(best.AreaM2, other.AreaM2),
                Eta0Beam = Math.Max(best.Eta0Beam, other.Eta0Beam),
                A1WPerM2K = Math.Min(best.A1WPerM2K, other.A1WPerM2K),
                A2WPerM2K2 = Math.Min(best.A2WPerM2K2, other.A2WPerM2K2),
                WindLossJPerM3K = Math.Min(best.WindLossJPerM3K, other.WindLossJPerM3K),
                IncidenceB0 = Math.Min(best.IncidenceB0, other.IncidenceB0),
                DiffuseModifier = Math.Max(best.DiffuseModifier, other.DiffuseModifier),
                CapacityJPerM2K = Math.Min(best.CapacityJPerM2K, other.CapacityJPerM2K),
                FlowKgPerS = Math.Max(best.FlowKgPerS, other.FlowKgPerS),
            };
        }

        return best;
    }

    private SolarPart Numbers(DesignedSolar solar) => SolarPart.Of(solar.Install(Nothing));

    private Installation Nothing { get; } = LayoutBuilder.Build(assessor.Scenario, Layout.Bare(assessor.Scenario.Systems.Choices)).Installation;

    private IEnumerable<DesignedSolar> Points(LevelSets set, IReadOnlyList<Choice> over) => Combination.Of(set, over.Select(choices.IndexOf))
        .Select(p => LayoutBuilder.Begin(assessor.Scenario, space.At(p)).Systems.OfType<DesignedSolar>().First());
}
