using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>A layout worked out: its numbers for the season model, and everything it needs.</summary>
public sealed record BuiltLayout
{
    /// <summary>The choices.</summary>
    public required Layout Layout { get; init; }

    /// <summary>Its numbers for the season model.</summary>
    public required Installation Installation { get; init; }

    /// <summary>Where the collector looks and how it turns; null without one.</summary>
    public required Climate.Plane.Mount? Mount { get; init; }

    /// <summary>The solar part; null without a collector.</summary>
    public required SolarLoop? Solar { get; init; }

    /// <summary>The electric supply; null when nothing needs current.</summary>
    public required SupplyPlan? Supply { get; init; }

    /// <summary>Floor that tank and barrels take [m²].</summary>
    public required double StoreFloorM2 { get; init; }

    /// <summary>Everything that is needed.</summary>
    public required IReadOnlyList<NeededPart> Parts { get; init; }

    /// <summary>What the catalogue could not give, in plain words; such a layout fails a check.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}
