using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What the stand of a solar plant is worked out from.</summary>
/// <param name="Collector">The collector.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Frames">Frames that carry them.</param>
/// <param name="Mount">What carries them.</param>
/// <param name="Drive">The drive of each frame; null when none.</param>
/// <param name="Dials">What is dialled in.</param>
/// <param name="Site">The builder's figures of the place.</param>
internal readonly record struct StandTask(
    Collector Collector, int Count, int Frames, CollectorMount Mount, Drive? Drive, SolarDials Dials, SiteLimits Site)
{
    private const double AreaPerFourAnchorsM2 = 2;
    private const int AnchorsTogether = 4;

    /// <summary>Collectors on the fullest frame.</summary>
    public int Together => (Count + Frames - 1) / Frames;

    /// <summary>Weight of the fullest frame with its collectors [kg].</summary>
    public double WeightKg =>
        (Together * Collector.WeightKg) + (Mount.WeightKg * (Mount.Unit == PartUnit.SquareMetre ? Together * Collector.AreaM2 : 1));

    /// <summary>Screws or bolts that hold all frames: four for each two square metres (common practice, no source).</summary>
    public int Anchors => (int)Math.Ceiling(Count * Collector.AreaM2 / AreaPerFourAnchorsM2) * AnchorsTogether;
}
