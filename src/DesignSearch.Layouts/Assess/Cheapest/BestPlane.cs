using System.Collections.Concurrent;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>For each hour the most light that any of some mounts catches.</summary>
/// <param name="assessor">Scenario and winters.</param>
/// <param name="space">Points to layouts.</param>
internal sealed class BestPlane(LayoutAssessor assessor, Problem.LayoutSpace space)
{
    private static readonly Choice[] Choices =
        [SolarChoices.Mount, SolarChoices.TiltDeg, SolarChoices.AzimuthDeg, SolarChoices.LimitDeg, SolarChoices.SwitchHours, SolarChoices.Steps];

    private readonly int[] places = [.. Choices.Select(assessor.Scenario.Systems.Choices.IndexOf)];
    private readonly ConcurrentDictionary<(string, Winter), PlaneIrradiance> known = new();

    /// <summary>The light of each winter.</summary>
    /// <param name="set">Layouts with collectors.</param>
    public Func<Winter, PlaneIrradiance?> Of(LevelSets set)
    {
        var name = string.Join('/', places.Select(i => string.Join(',', set[i].ToArray())));
        return winter => known.GetOrAdd((name, winter), _ => Best(Mounts(set), winter));
    }

    private List<Mount> Mounts(LevelSets set) =>
        [.. Combination.Of(set, places).Select(p => LayoutBuilder.Begin(assessor.Scenario, space.At(p)).Systems.Select(s => s.Mount).First(m => m is not null)!).Distinct()];

    private PlaneIrradiance Best(List<Mount> mounts, Winter winter)
    {
        var best = assessor.Winters.Planes.Get(winter, mounts[0]);
        foreach (var mount in mounts.Skip(1))
        {
            var other = assessor.Winters.Planes.Get(winter, mount);
            best = new PlaneIrradiance
            {
                BeamWPerM2 = Most(best.BeamWPerM2, other.BeamWPerM2),
                SkyWPerM2 = Most(best.SkyWPerM2, other.SkyWPerM2),
                GroundWPerM2 = Most(best.GroundWPerM2, other.GroundWPerM2),
                CosIncidence = Most(best.CosIncidence, other.CosIncidence),
                Moves = 0,
                TravelDeg = 0,
            };
        }

        return best;
    }

    private static double[] Most(double[] a, double[] b) => [.. a.Zip(b, Math.Max)];
}
