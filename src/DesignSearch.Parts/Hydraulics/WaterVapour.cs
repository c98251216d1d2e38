using DesignSearch.Physics;

namespace DesignSearch.Parts.Hydraulics;

/// <summary>Boiling of water, by Antoine's equation (two sets of constants, joined at 100 °C; 1 to 200 °C, 0.5 K).</summary>
public static class WaterVapour
{
    private const double KPaPerMmHg = 0.133322;
    private const double KPaPerBar = 100;
    private const double HPaPerBar = 1000;
    private const double JoinedAtKPa = 101.325;

    /// <summary>Pressure of the air at sea level [bar].</summary>
    public const double SeaLevelBar = Atmosphere.SeaLevelHPa / HPaPerBar;

    /// <summary>Temperature at which water boils [°C].</summary>
    /// <param name="gaugeBar">Pressure above that of the air at sea level [bar], -0.95 to 14.</param>
    public static double BoilsAtC(double gaugeBar)
    {
        var kPa = (gaugeBar + SeaLevelBar) * KPaPerBar;
        var (a, b, c) = Constants(kPa > JoinedAtKPa);
        return (b / (a - Math.Log10(kPa / KPaPerMmHg))) - c;
    }

    /// <summary>Pressure at which water of this temperature boils [bar, absolute].</summary>
    /// <param name="celsius">Temperature [°C], 1 to 200.</param>
    public static double PressureBar(double celsius)
    {
        const double BoilsAtSeaLevelC = 100;
        var (a, b, c) = Constants(celsius > BoilsAtSeaLevelC);
        return Math.Pow(10, a - (b / (c + celsius))) * KPaPerMmHg / KPaPerBar;
    }

    // Antoine's constants for mm of mercury and °C, as handbooks print them for water below and above its boiling point.
    private static (double A, double B, double C) Constants(bool isHot) =>
        isHot ? (8.14019, 1810.94, 244.485) : (8.07131, 1730.63, 233.426);
}
