using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Solar;

/// <summary>The stand that carries collectors, fixed or turning.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record CollectorMount(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("mount", "mounts.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(IsFixed == (Axis == TurningAxis.None), "axis", "none for a fixed mount, vertical or sloping for one that turns"),
        new(IsFixed == (LimitAngleDeg == 0), "limit_angle_deg", "0 for a fixed mount, more for one that turns"),
        new(IsFixed || WorkingWindMPerS > 0, "working_wind_m_per_s", "more than 0 for a mount that turns"),
        new(!IsFixed || !NeedsDrive, "needs_drive", "no for a fixed mount"),
        new(WorkingWindMPerS <= HoldsWindMPerS, "working_wind_m_per_s", "at most the wind that the mount holds"),
        new(Founding is Founding.Feet or Founding.Ballast == (FeetApartM > 0), "feet_apart_m", "more than 0 for feet and ballast, else 0"),
    ];

    /// <summary>How it turns.</summary>
    public required TurningKind Turning { get; init; }

    /// <summary>The axis about which it turns.</summary>
    public required TurningAxis Axis { get; init; }

    /// <summary>Largest collector area that one mount carries [m²], from 0.5 to 100.</summary>
    public required double MaxAreaM2 { get; init; }

    /// <summary>Largest turn to either side of the middle [°], 0 when fixed, from 0 to 90.</summary>
    public required double LimitAngleDeg { get; init; }

    /// <summary>Friction coefficient of its bearing, 0 when fixed, from 0 to 0.5.</summary>
    public required double BearingFriction { get; init; }

    /// <summary>Mean diameter on which the bearing rubs or rolls [mm], 0 when fixed, from 0 to 500.</summary>
    public required double BearingDiameterMm { get; init; }

    /// <summary>Distance from the axis to the centre of gravity of what turns [m], from 0 to 1.</summary>
    public required double ImbalanceM { get; init; }

    /// <summary>Gust up to which it may turn [m/s], 0 when fixed, from 0 to 60.</summary>
    public required double WorkingWindMPerS { get; init; }

    /// <summary>Gust that it holds when locked and anchored as described [m/s], from 10 to 80.</summary>
    public required double HoldsWindMPerS { get; init; }

    /// <summary>Weight per unit [kg], from 0.5 to 500.</summary>
    public required double WeightKg { get; init; }

    /// <summary>Whether it needs a motor drive.</summary>
    public required bool NeedsDrive { get; init; }

    /// <summary>What keeps it where it is.</summary>
    public required Founding Founding { get; init; }

    /// <summary>Lower edge of the collectors above the ground [m], from 0 to 5.</summary>
    public required double ClearanceM { get; init; }

    /// <summary>From its front feet to its back feet, or the depth of its ballast trays [m]; 0 on a post or a wall, from 0 to 10.</summary>
    public required double FeetApartM { get; init; }

    private bool IsFixed => Turning == TurningKind.Fixed;

    internal static CollectorMount Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece, PartUnit.SquareMetre]))
    {
        Turning = cells.Word("turning", Words.Of<TurningKind>(), "How it turns"),
        Axis = cells.Word("axis", Words.Of<TurningAxis>(), "The axis about which it turns"),
        MaxAreaM2 = cells.Number("max_area_m2", 0.5, 100, "Largest collector area that one mount carries [m²]"),
        LimitAngleDeg = cells.Number("limit_angle_deg", 0, 90, "Largest turn to either side of the middle [°], 0 when fixed"),
        BearingFriction = cells.Number("bearing_friction", 0, 0.5, "Friction coefficient of its bearing, 0 when fixed"),
        BearingDiameterMm = cells.Number("bearing_diameter_mm", 0, 500, "Mean diameter on which the bearing rubs or rolls [mm], 0 when fixed"),
        ImbalanceM = cells.Number("imbalance_m", 0, 1, "Distance from the axis to the centre of gravity of what turns [m]"),
        WorkingWindMPerS = cells.Number("working_wind_m_per_s", 0, 60, "Gust up to which it may turn [m/s], 0 when fixed"),
        HoldsWindMPerS = cells.Number("holds_wind_m_per_s", 10, 80, "Gust that it holds when locked and anchored as described [m/s]"),
        WeightKg = cells.Number("weight_kg", 0.5, 500, "Weight per unit [kg]"),
        NeedsDrive = cells.YesNo("needs_drive", "Whether it needs a motor drive"),
        Founding = cells.Word("founding", Words.Of<Founding>(), "What keeps it where it is"),
        ClearanceM = cells.Number("clearance_m", 0, 5, "Lower edge of the collectors above the ground [m]"),
        FeetApartM = cells.Number(
            "feet_apart_m", 0, 10, "From its front feet to its back feet, or the depth of its ballast trays [m]; 0 on a post or a wall"),
    };
}
