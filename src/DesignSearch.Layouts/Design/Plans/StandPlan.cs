using System.Text.Json.Serialization;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Design.Plans;

/// <summary>
/// A frame with its footing as figures, and the pieces that follow from them. Lengths run from joint to joint; sections of timber or
/// steel are not reckoned.
/// </summary>
public sealed record StandPlan
{
    private const double LeastCm = 5;

    /// <summary>Id of the mount.</summary>
    public required string MountId { get; init; }

    /// <summary>True where the mount is bought by the area that it carries, and not as a piece.</summary>
    public required bool MountIsByArea { get; init; }

    /// <summary>Ids of what holds it: anchors, concrete, ballast, stops and bolts.</summary>
    public required IReadOnlyList<string> HeldBy { get; init; }

    /// <summary>Frames, all alike; the fullest is drawn.</summary>
    public required int Frames { get; init; }

    /// <summary>Collectors on it, side by side.</summary>
    public required int Collectors { get; init; }

    /// <summary>What keeps it where it is.</summary>
    public required Founding Founding { get; init; }

    /// <summary>The axis about which it turns.</summary>
    public required TurningAxis Axis { get; init; }

    /// <summary>Largest turn to either side [°]; 0 where fixed.</summary>
    public required double LimitDeg { get; init; }

    /// <summary>Width of all its collectors [m].</summary>
    public required double WidthM { get; init; }

    /// <summary>Length of a collector up its slope [m].</summary>
    public required double ChordM { get; init; }

    /// <summary>Tilt in its middle place [°].</summary>
    public required double TiltDeg { get; init; }

    /// <summary>Where it faces there, clockwise from true north [°].</summary>
    public required double AzimuthDeg { get; init; }

    /// <summary>Lower edge of the collectors above the ground [m].</summary>
    public required double ClearanceM { get; init; }

    /// <summary>From front feet to back feet, or the depth of the trays [m]; 0 on a post or a wall.</summary>
    public required double FeetApartM { get; init; }

    /// <summary>Screws or bolts on one frame; 0 where it stands otherwise.</summary>
    public required double AnchorsEach { get; init; }

    /// <summary>Foot of the footing below the ground [m]; 0 without one.</summary>
    public required double DepthM { get; init; }

    /// <summary>Side of the block under a post [m]; else depth of the base in the direction of the wind.</summary>
    public required double BaseM { get; init; }

    /// <summary>Concrete under one frame [m³].</summary>
    public required double ConcreteM3 { get; init; }

    /// <summary>Ballast on one frame [kg].</summary>
    public required double BallastKg { get; init; }

    /// <summary>Depth of the plate as seen from above [m].</summary>
    [JsonIgnore]
    public double ReachM => ChordM * Math.Cos(TiltDeg * Math.PI / 180);

    /// <summary>Height of its upper edge over its lower one [m].</summary>
    [JsonIgnore]
    public double RiseM => ChordM * Math.Sin(TiltDeg * Math.PI / 180);

    /// <summary>Radius of the circle that a frame about an upright axis sweeps [m]; 0 for any other.</summary>
    [JsonIgnore]
    public double SweepM => Axis == TurningAxis.Vertical ? Math.Sqrt((WidthM * WidthM) + (ReachM * ReachM)) / 2 : 0;

    /// <summary>Pieces of one frame.</summary>
    [JsonIgnore]
    public IReadOnlyList<Piece> Pieces => [.. StandPieces.Of(this).Where(p => p.LengthM * 100 >= LeastCm)];

    /// <summary>Blocks of concrete under one frame; none where it stands otherwise.</summary>
    [JsonIgnore]
    public IReadOnlyList<Block> Blocks
    {
        get
        {
            if (ConcreteM3 <= 0 || DepthM <= 0)
                return [];
            if (Founding == Founding.Post)
                return [new(ReachM / 2, WidthM / 2, BaseM, ConcreteM3 / (BaseM * BaseM))];
            var feet = StandPieces.Feet(this);
            var side = Math.Sqrt(ConcreteM3 / feet.Count / DepthM);
            return [.. feet.Select(f => new Block(f.X, f.Y, side, DepthM))];
        }
    }

    /// <summary>What to cut for all frames, the longest first; waste is not in it.</summary>
    [JsonIgnore]
    public IReadOnlyList<CutLine> CutList =>
    [
        .. Pieces.GroupBy(p => (p.Name, LengthM: Math.Round(p.LengthM, 2)))
            .Select(g => new CutLine(g.Key.Name, g.Count() * Frames, g.Key.LengthM))
            .OrderByDescending(c => c.LengthM).ThenBy(c => c.Name, StringComparer.Ordinal),
    ];
}
