namespace DesignSearch.Parts.OffGrid;

/// <summary>How much battery a run of dark days asks for.</summary>
public static class BatterySize
{
    // How much more charge a lead battery must have when it is cold. Source: two published sheets for the sizing of home plants, which
    // agree (batteries-solar.blogspot.com; alphasolar.net 085); given in whole degrees Fahrenheit, 80 to 20.
    private static readonly (double C, double Times)[] Lead =
    [
        (-6.7, 1.59), (-1.1, 1.40), (4.4, 1.30), (10, 1.19), (15.6, 1.11), (21.2, 1.04), (26.7, 1.00),
    ];

    // From memory, no source; plausible only.
    private static readonly (double C, double Times)[] Lithium = [(-20, 1.45), (-10, 1.25), (0, 1.10), (25, 1.00)];

    // A lead battery's acid by its charge: 40 % about -9 °C, full -65 °C (konferencjaskd2024.pl 13_11_12_2575); flat just below 0 °C.
    private static readonly (double C, double Charge)[] Freezes = [(-65, 1.00), (-9, 0.40), (0, 0)];

    /// <summary>How much more charge it must have in the cold, 1 when it is warm.</summary>
    /// <param name="chemistry">What it is made of.</param>
    /// <param name="celsius">How cold it is [°C]; below the table its last slope goes on.</param>
    public static double ColdFactor(BatteryChemistry chemistry, double celsius) =>
        Math.Max(1, Between(chemistry == BatteryChemistry.Lithium ? Lithium : Lead, celsius));

    /// <summary>Share of its charge that must stay in it so that it does not freeze [0…1]; 0 for lithium.</summary>
    /// <param name="chemistry">What it is made of.</param>
    /// <param name="celsius">How cold it may get [°C].</param>
    public static double ChargeAgainstFrost(BatteryChemistry chemistry, double celsius) =>
        chemistry == BatteryChemistry.Lithium ? 0 : Math.Clamp(Between(Freezes, celsius), 0, 1);

    /// <summary>Charge of a new battery, when it is warm, that serves to the end of its life on the coldest day [A·h].</summary>
    /// <param name="runWh">What must be taken out over the run [W·h].</param>
    /// <param name="depth">Share of its charge that may be taken out [0…1], above 0.</param>
    /// <param name="agedShare">Share of its charge that is left at the end of its life [0…1], above 0.</param>
    /// <param name="coldFactor">See <see cref="ColdFactor"/>.</param>
    /// <param name="volts">Its voltage [V], above 0.</param>
    public static double AmpHours(double runWh, double depth, double agedShare, double coldFactor, double volts) =>
        runWh / depth / agedShare * coldFactor / volts;

    /// <summary>Open voltage of a panel in the cold [V].</summary>
    /// <param name="openV">Open voltage at cells of 25 °C [V].</param>
    /// <param name="lossPerK">Share of it that a kelvin of warmth costs [1/K].</param>
    /// <param name="cellC">Temperature of the cells; at dawn that of the air [°C].</param>
    public static double OpenV(double openV, double lossPerK, double cellC) => openV * (1 + (lossPerK * (PlateC - cellC)));

    private const double PlateC = 25;

    private static double Between((double C, double Value)[] table, double celsius)
    {
        var i = 1;
        while (i < table.Length - 1 && celsius > table[i].C)
            i++;
        var (from, to) = (table[i - 1], table[i]);
        return from.Value + ((to.Value - from.Value) / (to.C - from.C) * (celsius - from.C));
    }
}
