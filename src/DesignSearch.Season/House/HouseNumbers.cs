using DesignSearch.Season.Covers;

namespace DesignSearch.Season.House;

/// <summary>The greenhouse in numbers.</summary>
public sealed record HouseNumbers
{
    /// <summary>Frost limit: an hour whose mean air lies below it is a frost hour [°C].</summary>
    public required double FrostLimitC { get; init; }

    /// <summary>Cover towards the open air [m²], above 0.</summary>
    public required double CoverAreaM2 { get; init; }

    /// <summary>Resistance of the cover from its inner to its outer surface, without films [m²K/W], 0 or more.</summary>
    public required double CoverResistanceM2KPerW { get; init; }

    /// <summary>Resistance of a permanent lining under the cover, its air gap included [m²K/W]; 0 without one.</summary>
    public double LiningResistanceM2KPerW { get; init; }

    /// <summary>Resistance that the night cover adds while it is closed, edge leaks allowed for [m²K/W]; 0 without one.</summary>
    public double NightCoverResistanceM2KPerW { get; init; }

    /// <summary>What closes the night cover and opens it.</summary>
    public CoverDrawing NightCoverDrawnBy { get; init; } = CoverDrawing.Hand;

    /// <summary>Share of the sky in what the cover's outside sees, area-weighted over its slopes [0…1].</summary>
    public required double SkyViewFactor { get; init; }

    /// <summary>Heat radiation that passes the cover where no lining hides it; an opaque sheet by default.</summary>
    public CoverRadiation CoverRadiation { get; init; } = CoverRadiation.Opaque;

    /// <summary>What the cover takes from air and floor and gives to the outside, over what its layers say: bars, laps, gutters and air that circles behind them.</summary>
    public double CoverExchange { get; init; } = 1;

    /// <summary>Heat capacity of the cover [J/(m²K)].</summary>
    public double CoverCapacityJPerM2K { get; init; } = 3000;

    /// <summary>Sun that lining and dirt let through, as a factor on what passes the bare cover [0…1].</summary>
    public double LiningTransmittance { get; init; } = 1;

    /// <summary>Floor [m²], above 0.</summary>
    public required double FloorAreaM2 { get; init; }

    /// <summary>Enclosed air [m³], above 0.</summary>
    public required double VolumeM3 { get; init; }

    /// <summary>Edge of the floor towards the outside [m].</summary>
    public required double PerimeterM { get; init; }

    /// <summary>Heat lost through the floor's edge [W/(m·K)].</summary>
    public required double EdgeLossWPerMK { get; init; }

    /// <summary>Air changes without wind [1/h].</summary>
    public required double AirChangesPerHour { get; init; }

    /// <summary>Air changes added by each metre per second of wind at the roof [1/h per m/s].</summary>
    public required double AirChangesPerHourPerMPerS { get; init; }

    /// <summary>Largest loss through opened vents [W/K]; they begin to open at <see cref="VentAboveC"/>.</summary>
    public required double VentWPerK { get; init; }

    /// <summary>Air temperature at which the vents begin to open [°C].</summary>
    public double VentAboveC { get; init; } = 25;

    /// <summary>What stands in it, nothing by default.</summary>
    public ContentsNumbers Contents { get; init; } = ContentsNumbers.None;

    /// <summary>Solid wall at the back, none by default.</summary>
    public WallNumbers Wall { get; init; } = WallNumbers.None;
}
