namespace DesignSearch.Parts.Hydraulics;

/// <summary>Water at the pressure of the air, 0 to 95 °C; fits to the IAPWS tables (IF97 density, R12-08 viscosity).</summary>
public static class WaterProperties
{
    private static readonly (double C, double Density, double Viscosity)[] Table =
    [
        (0.01, 999.845, 1.7911e-3), (5, 999.967, 1.5182e-3), (10, 999.702, 1.3059e-3), (20, 998.206, 1.0016e-3), (30, 995.652, 7.9722e-4),
        (40, 992.224, 6.5273e-4), (50, 988.047, 5.4652e-4), (60, 983.211, 4.6604e-4), (70, 977.779, 4.0356e-4), (80, 971.803, 3.5406e-4), (90, 965.319, 3.1418e-4),
    ];

    /// <summary>Density [kg/m³].</summary>
    /// <param name="celsius">Temperature [°C]; held at the ends of the table.</param>
    public static double DensityKgPerM3(double celsius) => Between(celsius, r => r.Density);

    /// <summary>Dynamic viscosity [Pa·s], interpolated in its logarithm.</summary>
    /// <param name="celsius">Temperature [°C]; held at the ends of the table.</param>
    public static double ViscosityPaS(double celsius) => Math.Exp(Between(celsius, r => Math.Log(r.Viscosity)));

    private static double Between(double celsius, Func<(double C, double Density, double Viscosity), double> value)
    {
        var c = Math.Clamp(celsius, Table[0].C, Table[^1].C);
        var i = Math.Min(Array.FindLastIndex(Table, r => r.C <= c), Table.Length - 2);
        var share = (c - Table[i].C) / (Table[i + 1].C - Table[i].C);
        return value(Table[i]) + (share * (value(Table[i + 1]) - value(Table[i])));
    }
}
