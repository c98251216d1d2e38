namespace DesignSearch.Parts.Hydraulics;

/// <summary>Friction of water in pipes: Darcy's factor and the pressure it costs.</summary>
public static class PipeFriction
{
    /// <summary>Below this Reynolds number the flow is taken as laminar.</summary>
    public const double LaminarBelow = 2300;

    /// <summary>Darcy's factor: 64/Re in laminar flow, else the root of Colebrook's equation 1/√f = −2 lg(ε/3.7 + 2.51/(Re √f)).</summary>
    /// <param name="reynolds">Reynolds number, above 0.</param>
    /// <param name="relativeRoughness">Roughness over bore, from 0 to 0.05.</param>
    public static double Factor(double reynolds, double relativeRoughness)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(reynolds);
        ArgumentOutOfRangeException.ThrowIfNegative(relativeRoughness);
        if (reynolds < LaminarBelow)
            return 64 / reynolds;

        // x = 1/√f; Newton's method from Haaland's explicit formula settles within a few rounds.
        var x = 1 / Math.Sqrt(Haaland(reynolds, relativeRoughness));
        for (var round = 0; round < 20; round++)
        {
            var inner = (relativeRoughness / 3.7) + (2.51 * x / reynolds);
            var step = (x + (2 * Math.Log10(inner))) / (1 + (2 * 2.51 / reynolds / (inner * Math.Log(10))));
            x -= step;
            if (Math.Abs(step) < 1e-13 * x)
                break;
        }

        return 1 / (x * x);
    }

    /// <summary>Haaland's explicit formula for turbulent flow: 1/√f = −1.8 lg((ε/3.7)^1.11 + 6.9/Re).</summary>
    /// <param name="reynolds">Reynolds number, above 2300.</param>
    /// <param name="relativeRoughness">Roughness over bore.</param>
    public static double Haaland(double reynolds, double relativeRoughness)
    {
        var x = -1.8 * Math.Log10(Math.Pow(relativeRoughness / 3.7, 1.11) + (6.9 / reynolds));
        return 1 / (x * x);
    }

    /// <summary>Mean speed in a round pipe [m/s].</summary>
    /// <param name="flowM3PerS">Flow [m³/s].</param>
    /// <param name="boreM">Bore [m].</param>
    public static double SpeedMPerS(double flowM3PerS, double boreM) => flowM3PerS / (Math.PI / 4 * boreM * boreM);

    /// <summary>Reynolds number of water in a round pipe.</summary>
    /// <param name="flowM3PerS">Flow [m³/s].</param>
    /// <param name="boreM">Bore [m].</param>
    /// <param name="celsius">Temperature of the water [°C].</param>
    public static double Reynolds(double flowM3PerS, double boreM, double celsius) =>
        WaterProperties.DensityKgPerM3(celsius) * SpeedMPerS(flowM3PerS, boreM) * boreM / WaterProperties.ViscosityPaS(celsius);

    /// <summary>Pressure lost along a straight pipe: f L/D ρ v²/2 [Pa]; 0 without flow.</summary>
    /// <param name="flowM3PerS">Flow of water [m³/s], 0 or more.</param>
    /// <param name="boreM">Bore [m].</param>
    /// <param name="lengthM">Length [m].</param>
    /// <param name="roughnessM">Roughness [m].</param>
    /// <param name="celsius">Temperature of the water [°C].</param>
    public static double DropPa(double flowM3PerS, double boreM, double lengthM, double roughnessM, double celsius)
    {
        if (flowM3PerS == 0)
            return 0;
        var speed = SpeedMPerS(flowM3PerS, boreM);
        var factor = Factor(Reynolds(flowM3PerS, boreM, celsius), roughnessM / boreM);
        return factor * lengthM / boreM * WaterProperties.DensityKgPerM3(celsius) * speed * speed / 2;
    }
}
