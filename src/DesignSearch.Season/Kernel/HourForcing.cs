namespace DesignSearch.Season.Kernel;

/// <summary>What one hour's weather does to every layout.</summary>
/// <param name="OutsideC">Outdoor air [°C].</param>
/// <param name="SkyC">Sky [°C].</param>
/// <param name="RoofWindMPerS">Wind at the roof [m/s].</param>
/// <param name="SunW">Sun through the bare cover [W].</param>
/// <param name="GroundC">Undisturbed ground below the simulated soil [°C].</param>
/// <param name="AirJPerM3K">Heat capacity of the outdoor air [J/(m³K)].</param>
/// <param name="Dark">Share of the hour in which a night cover is closed, 0 to 1.</param>
/// <param name="Power">1 with mains, 0 in a power cut.</param>
internal readonly record struct HourForcing(double OutsideC, double SkyC, double RoofWindMPerS, double SunW, double GroundC, double AirJPerM3K, double Dark, double Power = 1)
{
    /// <summary>Share of the hour in which a light sensor has a night cover closed, no less than <see cref="Dark"/>.</summary>
    public double Dim { get; init; }

    /// <summary>Share of the hour in which a timer has it closed.</summary>
    public double Clock { get; init; }

    /// <summary>How much colder than the air ground and plants outside are [K], 0 or more.</summary>
    public double AroundBelowK { get; init; }

    /// <summary>Electricity has its cheap price.</summary>
    public bool IsCheap { get; init; }
}
