using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.House;

/// <summary>Grass and ground round the house at night: what they radiate to the sky, less what air and soil give them.</summary>
public static class GroundOutside
{
    private const double Emissivity = 0.97;
    private const double StillWPerM2K = 4;
    private const double WindJPerM3K = 4;
    private const int Rounds = 6;

    /// <summary>How much colder than the air they are [K], 0 or more: ε σ (T⁴ − Ts⁴) = h (Ta − T) + G, h = 4 + 4 v of EN ISO 6946.</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="skyC">Sky [°C].</param>
    /// <param name="windMPerS">Wind near the ground [m/s].</param>
    /// <param name="assumptions">The numbers chosen.</param>
    public static double BelowAirK(double airC, double skyC, double windMPerS, SeasonAssumptions assumptions)
    {
        ArgumentNullException.ThrowIfNull(assumptions);
        var (air, sky, h) = (airC + Temperature.ZeroCelsiusK, skyC + Temperature.ZeroCelsiusK, StillWPerM2K + WindJPerM3K * windMPerS);
        var soil = assumptions[HouseAssumptions.GroundOutsideWPerM2];
        var ground = air;
        for (var i = 0; i < Rounds; i++)
        {
            var cube = Emissivity * Radiation.StefanBoltzmannWPerM2K4 * ground * ground * ground;
            var balance = cube * ground - Emissivity * Radiation.StefanBoltzmannWPerM2K4 * sky * sky * sky * sky - h * (air - ground) - soil;
            ground -= balance / (4 * cube + h);
        }

        return Math.Max(0, air - ground);
    }
}
