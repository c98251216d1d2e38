using DesignSearch.Season.Glass;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>A greenhouse with a ridge: two long walls, two gables, two roof slopes.</summary>
public sealed record Greenhouse
{
    /// <summary>Length along the ridge [m].</summary>
    public required double LengthM { get; init; }

    /// <summary>Width across the ridge [m].</summary>
    public required double WidthM { get; init; }

    /// <summary>Height of the eaves [m].</summary>
    public required double EavesM { get; init; }

    /// <summary>Height of the ridge [m], above the eaves.</summary>
    public required double RidgeM { get; init; }

    /// <summary>Direction the ridge runs towards, clockwise from true north [°].</summary>
    public required double RidgeAzimuthDeg { get; init; }

    /// <summary>Catalogue U-value of the cover, standard films included [W/(m²K)].</summary>
    public required double CoverUWPerM2K { get; init; }

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

    /// <summary>What the scenario says of single systems.</summary>
    public IReadOnlyList<SystemWish> Wishes { get; init; } = [];

    /// <summary>Floor [m²].</summary>
    public double FloorM2 => LengthM * WidthM;

    /// <summary>Air [m³].</summary>
    public double VolumeM3 => FloorM2 * (EavesM + RidgeM) / 2;

    /// <summary>Edge of the floor [m].</summary>
    public double PerimeterM => 2 * (LengthM + WidthM);

    /// <summary>Length of one roof slope across [m].</summary>
    public double SlopeM => Math.Sqrt(WidthM * WidthM / 4 + (RidgeM - EavesM) * (RidgeM - EavesM));

    /// <summary>Tilt of the roof [°].</summary>
    public double RoofTiltDeg => Math.Atan2(RidgeM - EavesM, WidthM / 2) * 180 / Math.PI;

    /// <summary>Whole cover [m²].</summary>
    public double CoverM2 => Facets.Sum(f => f.AreaM2);

    /// <summary>The six faces: two long walls, two gables, two slopes.</summary>
    public IReadOnlyList<Facet> Facets
    {
        get
        {
            var (right, left) = (Turn(90), Turn(270));
            var gable = WidthM * (EavesM + RidgeM) / 2;
            return
            [
                new(LengthM * EavesM, 90, right), new(LengthM * EavesM, 90, left),
                new(gable, 90, Turn(0)), new(gable, 90, Turn(180)),
                new(LengthM * SlopeM, RoofTiltDeg, right), new(LengthM * SlopeM, RoofTiltDeg, left),
            ];
        }
    }

    /// <summary>Share of the sky in what the cover sees, weighted by area: (1 + cos tilt)/2 for each face.</summary>
    public double SkyViewFactor => Facets.Sum(f => f.AreaM2 * (1 + Math.Cos(f.TiltDeg * Math.PI / 180)) / 2) / CoverM2;

    /// <summary>What the scenario says of one system; null where it says nothing.</summary>
    /// <typeparam name="T">The wish of that system.</typeparam>
    public T? Wish<T>()
        where T : SystemWish => Wishes.OfType<T>().FirstOrDefault();

    private double Turn(double byDeg) => (RidgeAzimuthDeg + byDeg) % 360;
}
