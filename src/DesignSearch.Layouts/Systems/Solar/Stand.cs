using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What the storm does to one frame of a solar plant, and what holds it.</summary>
public sealed record Stand
{
    /// <summary>Area of the collectors on the fullest frame [m²].</summary>
    public required double AreaM2 { get; init; }

    /// <summary>Its width, side by side [m]; the chord across the axis where it turns.</summary>
    public required double WidthM { get; init; }

    /// <summary>Force coefficients in the steepest place that it takes.</summary>
    public required PlateWind Wind { get; init; }

    /// <summary>Pressure of the storm's gust [Pa].</summary>
    public required double StormPa { get; init; }

    /// <summary>Weight of collectors and frame [N].</summary>
    public required double WeightN { get; init; }

    /// <summary>Moment of the wind about the edge over which it would tip, at the foot of what holds it [N·m].</summary>
    public required double TipsNm { get; init; }

    /// <summary>Depth of the base in the direction of the wind [m]; 0 on a wall.</summary>
    public required double BaseM { get; init; }

    /// <summary>Foot of the footing below the ground [m]; 0 without one.</summary>
    public required double DepthM { get; init; }

    /// <summary>The builder's depth of frost [m]; null where it is only guessed.</summary>
    public required double? FrostGivenM { get; init; }

    /// <summary>Weight of concrete or ballast that it wants [N]; 0 where screws or wall bolts hold it.</summary>
    public required double HeavyN { get; init; }

    /// <summary>What holds each foot; null on a post or under ballast, and where the catalogue has none.</summary>
    public required Holdfast? Anchor { get; init; }

    /// <summary>How many of them hold all frames.</summary>
    public required int Anchors { get; init; }

    /// <summary>Pull on one anchor, the wind one and a half times [N]; 0 on a post or under ballast.</summary>
    public required double PullN { get; init; }

    /// <summary>Pull that it stands: the builder's test, else the catalogue's figure [N].</summary>
    public required double HoldsN { get; init; }

    /// <summary>Stops of the frame; null where it is fixed or the catalogue has none that hold.</summary>
    public required Holdfast? Stops { get; init; }

    /// <summary>Locking bolt, since stops take the storm one way only; null where fixed or the catalogue has none that holds.</summary>
    public required Holdfast? Bolt { get; init; }

    /// <summary>Greatest force of the storm on the frame [N].</summary>
    public double StormN => WindForce.ForceN(StormPa, AreaM2, Wind.Worst);

    /// <summary>The gust of that pressure [m/s].</summary>
    public double GustMPerS => WindForce.GustMPerS(StormPa);

    /// <summary>Moment about the axis in the storm [N·m].</summary>
    public double TurnsNm => WindForce.MomentNm(StormN, WidthM);

    /// <summary>Whether it stands on concrete.</summary>
    public bool IsCast => DepthM > 0;

    /// <summary>Concrete of the footing [m³].</summary>
    public double ConcreteM3 => IsCast ? HeavyN / Concrete.NPerM3 : 0;

    /// <summary>Ballast [kg].</summary>
    public double BallastKg => IsCast ? 0 : HeavyN / Gravity.StandardMPerS2;

    /// <summary>The bolt, where a spring drives it home whenever the current stops; null otherwise.</summary>
    public Holdfast? SpringBolt => Bolt is { Form: HoldfastForm.SpringBolt } spring ? spring : null;

    /// <summary>Moment about the axis of a gust while it works [N·m].</summary>
    /// <param name="gustMPerS">The gust [m/s].</param>
    public double GustNm(double gustMPerS) =>
        WindForce.MomentNm(WindForce.ForceN(WindForce.PressurePa(gustMPerS), AreaM2, Wind.Worst), WidthM);
}
