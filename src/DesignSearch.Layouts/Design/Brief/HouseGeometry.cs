using System.Runtime.CompilerServices;
using DesignSearch.Season.Glass;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>
/// The body of a greenhouse: a profile across the ridge, drawn out along its length. Areas by face, edges, air, lists, checks and drawings
/// all follow from it.
/// </summary>
public sealed class HouseGeometry
{
    // A piece of a hoop turns by no more than this: area 0.13 in 100 less than the hoop's, air 0.5 (docs/model.md, "From a layout to numbers") [°].
    private const double HoopStepDeg = 10;
    private const double Rad = Math.PI / 180;

    // A search asks for the same house many thousand times.
    private static readonly ConditionalWeakTable<Greenhouse, HouseGeometry> Known = [];

    private HouseGeometry(Greenhouse house)
    {
        WidthM = house.WidthM;
        var (length, width, foot) = (house.LengthM, house.WidthM, house.BaseWall.HeightM);
        Profile = [.. ProfileOf(house, foot)];
        FloorM2 = length * width;
        var (volume, end) = (0.0, 0.0);
        List<Facet> right = [], left = [], rightWall = [], leftWall = [];
        double Turn(double byDeg) => (house.RidgeAzimuthDeg + byDeg) % 360;
        for (var i = 1; i < Profile.Count; i++)
        {
            var ((x1, z1), (x2, z2)) = (Profile[i - 1], Profile[i]);
            var (dx, dz) = (x2 - x1, z2 - z1);
            volume += length * dx * (z1 + z2) / 2;
            end += dx * (z1 - foot + (z2 - foot)) / 2;
            if (dx == 0 && dz == 0)
                continue;
            var isRight = dz > 0 || (dz == 0 && x1 < width / 2);
            var area = length * (dx == 0 ? Math.Abs(dz) : Math.Sqrt(dx * dx + dz * dz));
            var tilt = dx == 0 ? 90 : Math.Atan2(Math.Abs(dz), dx) * 180 / Math.PI;
            var list = (dx == 0, isRight) switch { (true, true) => rightWall, (true, false) => leftWall, (false, true) => right, _ => left };
            list.Add(new(area, tilt, Turn(isRight ? 90 : 270)));
        }

        left.Reverse();
        VolumeM3 = volume;
        HouseFace[] faces =
        [
            new(FaceKind.LongWall, rightWall), new(FaceKind.OtherLongWall, leftWall),
            new(FaceKind.End, [new(end, 90, Turn(0))]), new(FaceKind.OtherEnd, [new(end, 90, Turn(180))]),
            new(FaceKind.Roof, right), new(FaceKind.OtherRoof, left),
        ];
        Faces = [.. faces.Where(f => f.Facets.Count > 0)];
        Facets = [.. Faces.SelectMany(f => f.Facets)];
        CoverM2 = Facets.Sum(f => f.AreaM2);
        var around = house.BackWall is null ? 2 * (length + width) : length + 2 * width;
        PerimeterM = house.BackWall is { Behind: BehindWall.Outside } ? 2 * (length + width) : around;
        BackWallM2 = house.BackWall is null ? 0 : length * house.RidgeM;
        BaseOpenM2 = Math.Max(0, foot - house.FloorBelowM) * around;
        BaseBuriedM2 = Math.Min(foot, house.FloorBelowM) * around;
        SkyViewFactor = Facets.Sum(f => f.AreaM2 * SkyShade.SkyView(f, this, house.BackWall, house.Horizon)) / CoverM2;
    }

    /// <summary>Width across the ridge [m].</summary>
    public double WidthM { get; }

    /// <summary>The cover as seen from the end, from its foot on the right hand over the top: across, and above the floor [m].</summary>
    public IReadOnlyList<(double AcrossM, double AboveM)> Profile { get; }

    /// <summary>The faces of the cover: long walls, ends, roofs.</summary>
    public IReadOnlyList<HouseFace> Faces { get; }

    /// <summary>The flat pieces of all faces in their order.</summary>
    public IReadOnlyList<Facet> Facets { get; }

    /// <summary>Floor [m²].</summary>
    public double FloorM2 { get; }

    /// <summary>Air [m³].</summary>
    public double VolumeM3 { get; }

    /// <summary>Edge of the floor towards the open air or the ground outside [m].</summary>
    public double PerimeterM { get; }

    /// <summary>Whole cover [m²].</summary>
    public double CoverM2 { get; }

    /// <summary>Share of the sky in what the cover sees, weighted by area: (1 + cos tilt)/2 for each piece, less what a wall behind hides.</summary>
    public double SkyViewFactor { get; }

    /// <summary>Wall that the house leans on, from floor to roof [m²]; 0 without one.</summary>
    public double BackWallM2 { get; }

    /// <summary>Base wall towards the open air [m²].</summary>
    public double BaseOpenM2 { get; }

    /// <summary>Base wall towards the ground [m²].</summary>
    public double BaseBuriedM2 { get; }

    /// <summary>The body of a house; worked out once for each.</summary>
    /// <param name="house">The house.</param>
    public static HouseGeometry Of(Greenhouse house) => Known.GetValue(house, h => new(h));

    private static IEnumerable<(double, double)> ProfileOf(Greenhouse house, double foot)
    {
        var (width, eaves, ridge) = (house.WidthM, house.EavesM, house.RidgeM);
        yield return (0, foot);
        yield return (0, eaves);
        switch (house.Shape)
        {
            case HouseShape.LeanTo:
                yield return (width, ridge);
                yield break;
            case HouseShape.Tunnel:
                foreach (var point in Hoop(width, eaves, ridge - eaves))
                    yield return point;
                break;
            default:
                yield return (width / 2, ridge);
                break;
        }

        yield return (width, eaves);
        yield return (width, foot);
    }

    // The inner points of an arc over the width, an even number of chords.
    private static IEnumerable<(double, double)> Hoop(double width, double eaves, double rise)
    {
        var radius = (width * width / 4 + rise * rise) / (2 * rise);
        var half = Math.Atan2(width / 2, radius - rise);
        var pieces = (int)Math.Ceiling(half / (HoopStepDeg * Rad) - 1e-9);
        for (var i = 1 - pieces; i < pieces; i++)
        {
            var (sin, cos) = Math.SinCos(half * i / pieces);
            yield return (width / 2 + radius * sin, eaves + rise - radius * (1 - cos));
        }
    }
}
