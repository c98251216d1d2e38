using DesignSearch.Climate.Sun;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>The greenhouse as its builder describes it; what follows from its sizes stands in <see cref="Geometry"/>.</summary>
public sealed record Greenhouse
{
    /// <summary>Length along the ridge [m].</summary>
    public required double LengthM { get; init; }

    /// <summary>Width across the ridge [m].</summary>
    public required double WidthM { get; init; }

    /// <summary>What it looks like from its end.</summary>
    public HouseShape Shape { get; init; }

    /// <summary>Height of the eaves above the floor, of the front of a lean-to, of the straight sides of a tunnel [m].</summary>
    public required double EavesM { get; init; }

    /// <summary>Height of the ridge or top above the floor [m], above the eaves.</summary>
    public required double RidgeM { get; init; }

    /// <summary>Direction the ridge runs towards, clockwise from true north [°].</summary>
    public required double RidgeAzimuthDeg { get; init; }

    /// <summary>The wall that a lean-to leans on; null for any other shape.</summary>
    public BackWall? BackWall { get; init; }

    /// <summary>The solid wall round its foot.</summary>
    public BaseWall BaseWall { get; init; } = BaseWall.None;

    /// <summary>A door in one of its ends that is told apart from the cover.</summary>
    public HouseDoor Door { get; init; } = HouseDoor.None;

    /// <summary>How far its floor lies below the ground outside [m].</summary>
    public double FloorBelowM { get; init; }

    /// <summary>Height of what stands about the house in eight directions from north clockwise [°]; empty where it is as about the collector.</summary>
    public IReadOnlyList<double> HorizonDeg { get; init; } = [];

    /// <summary>The same as a profile; null where it is as about the collector.</summary>
    internal HorizonProfile? Horizon => SiteLimits.Profile(HorizonDeg);

    /// <summary>What the roof is covered with where it is not as all else.</summary>
    public CoverSheet? RoofSheet { get; init; }

    /// <summary>Likewise the long walls.</summary>
    public CoverSheet? WallSheet { get; init; }

    /// <summary>Likewise the ends.</summary>
    public CoverSheet? EndSheet { get; init; }

    /// <summary>Catalogue U-value of the cover, standard films included [W/(m²K)].</summary>
    public required double CoverUWPerM2K { get; init; }

    /// <summary>True where that is the U-value of a whole house as greenhouse practice has it, not of a sheet.</summary>
    public bool CoverUIsOfHouse { get; init; }

    /// <summary>Share of heat radiation that each film of the cover lets through; 0 for a sheet, or a film that is wet inside [0…1].</summary>
    public double CoverLongWave { get; init; }

    /// <summary>What stands in it and stores heat; null where nothing is said, and then it is taken as empty, which is the safe side.</summary>
    public IReadOnlyList<HouseContents>? Contents { get; init; }

    /// <summary>Light the cover lets through at normal incidence, dirt and bars allowed for [0…1].</summary>
    public required double CoverLight { get; init; }

    /// <summary>Sheets or skins of the cover.</summary>
    public required int CoverLayers { get; init; }

    /// <summary>Air changes without wind [1/h].</summary>
    public required double AirChangesPerHour { get; init; }

    /// <summary>Air changes added by each m/s of wind at the roof [1/h per m/s].</summary>
    public required double AirChangesPerHourPerMPerS { get; init; }

    /// <summary>Heat lost through the floor's edge [W/(m·K)].</summary>
    public required double EdgeLossWPerMK { get; init; }

    /// <summary>Area of the vents when open [m²].</summary>
    public required double VentAreaM2 { get; init; }

    /// <summary>The limit that must hold [°C].</summary>
    public required double FrostLimitC { get; init; }

    /// <summary>What a log of this house said against its drawing; null where there is none.</summary>
    public HouseFit? Fit { get; init; }

    /// <summary>What the scenario says of single systems.</summary>
    public IReadOnlyList<SystemWish> Wishes { get; init; } = [];

    /// <summary>Its body: areas, edges, air.</summary>
    public HouseGeometry Geometry => HouseGeometry.Of(this);

    /// <summary>Floor [m²].</summary>
    public double FloorM2 => Geometry.FloorM2;

    /// <summary>Air [m³].</summary>
    public double VolumeM3 => Geometry.VolumeM3;

    /// <summary>Edge of the floor towards the outside [m].</summary>
    public double PerimeterM => Geometry.PerimeterM;

    /// <summary>Whole cover [m²].</summary>
    public double CoverM2 => Geometry.CoverM2;

    /// <summary>Catalogue U-value of the whole cover: the mean of its faces by their areas [W/(m²K)].</summary>
    public double MeanCoverUWPerM2K => IsOfOneSheet
        ? CoverUWPerM2K
        : (Geometry.Faces.Sum(f => f.AreaM2 * SheetOf(f.Kind).UWPerM2K) + (Door.AreaM2 * (Door.UWPerM2K - SheetOf(FaceKind.End).UWPerM2K))) / CoverM2;

    /// <summary>Light of the whole cover, likewise [0…1].</summary>
    public double MeanCoverLight => IsOfOneSheet
        ? CoverLight
        : (Geometry.Faces.Sum(f => f.AreaM2 * SheetOf(f.Kind).Light) + (Door.AreaM2 * (Door.Light - SheetOf(FaceKind.End).Light))) / CoverM2;

    /// <summary>What can be lined or covered at night: the cover without a door [m²].</summary>
    public double LinedM2 => CoverM2 - Door.AreaM2;

    /// <summary>Air changes without wind, the joints of a door included [1/h].</summary>
    public double StillAirChangesPerHour => AirChangesPerHour + (Door.LeakM3PerH / VolumeM3);

    /// <summary>True where a face is a single sheet.</summary>
    public bool HasSingleSheet => Geometry.Faces.Any(f => SheetOf(f.Kind).Layers == 1);

    /// <summary>Share of the usual loss that the floor's edge has: less where the floor lies below the ground outside, by e^(−z/δ) of EN ISO 13370 (from memory).</summary>
    public double EdgeShare => Math.Exp(-FloorBelowM / YearlyDepthM);

    // δ of EN ISO 13370, √(3.15e7 λ/(π c)), with 1.2 W/(m·K) and 2 MJ/(m³K) (from memory) [m].
    private const double YearlyDepthM = 2.45;

    private bool IsOfOneSheet => RoofSheet is null && WallSheet is null && EndSheet is null && Door.AreaM2 <= 0;

    /// <summary>What a face is covered with.</summary>
    /// <param name="kind">The face.</param>
    public CoverSheet SheetOf(FaceKind kind) => kind switch
    {
        FaceKind.Roof or FaceKind.OtherRoof => RoofSheet,
        FaceKind.End or FaceKind.OtherEnd => EndSheet,
        _ => WallSheet,
    }
    ?? new(CoverUWPerM2K, CoverLight, CoverLayers);

    /// <summary>What the scenario says of one system; null where it says nothing.</summary>
    /// <typeparam name="T">The wish of that system.</typeparam>
    public T? Wish<T>()
        where T : SystemWish => Wishes.OfType<T>().FirstOrDefault();
}
