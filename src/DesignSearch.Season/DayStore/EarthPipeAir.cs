namespace DesignSearch.Season.DayStore;

/// <summary>
/// Air in a buried pipe: film, effectiveness and pressure. Air at 15 °C and sea level. Equations in docs/model.md, "Day-heat store".
/// </summary>
public static class EarthPipeAir
{
    /// <summary>Heat that a cubic metre of air carries, density times specific heat [J/(m³K)].</summary>
    public const double JPerM3K = DensityKgPerM3 * JPerKgK;

    private const double DensityKgPerM3 = 1.225;
    private const double JPerKgK = 1006;
    private const double ViscosityPaS = 1.79e-5;
    private const double WPerMK = 0.0253;
    private const double LaminarBelow = 2300;
    private const double TurbulentFrom = 3000;
    private const double LaminarNusselt = 3.66;

    // Heads lost at the two ends of a pipe: sharp inlet and outlet.
    private const double EndHeads = 1.5;

    /// <summary>Reynolds number.</summary>
    /// <param name="boreM">Bore [m], above 0.</param>
    /// <param name="flowM3PerS">Flow in this pipe [m³/s].</param>
    public static double Reynolds(double boreM, double flowM3PerS) => DensityKgPerM3 * SpeedMPerS(boreM, flowM3PerS) * boreM / ViscosityPaS;

    /// <summary>Mean speed [m/s].</summary>
    /// <param name="boreM">Bore [m], above 0.</param>
    /// <param name="flowM3PerS">Flow in this pipe [m³/s].</param>
    public static double SpeedMPerS(double boreM, double flowM3PerS) => flowM3PerS / (Math.PI / 4 * boreM * boreM);

    /// <summary>Darcy's factor of a smooth pipe: 64/Re, from Re 2300 on (0.79 ln Re − 1.64)^−2.</summary>
    /// <param name="reynolds">Reynolds number, above 0.</param>
    public static double Friction(double reynolds) =>
        reynolds < LaminarBelow ? 64 / reynolds : 1 / Square(0.79 * Math.Log(reynolds) - 1.64);

    /// <summary>Film between air and a smooth wall [W/(m²K)]: Nu 3.66, from Re 3000 on Gnielinski's formula, straight between.</summary>
    /// <param name="boreM">Bore [m], above 0.</param>
    /// <param name="flowM3PerS">Flow in this pipe [m³/s].</param>
    public static double FilmWPerM2K(double boreM, double flowM3PerS)
    {
        var re = Reynolds(boreM, flowM3PerS);
        var nusselt = re < LaminarBelow ? LaminarNusselt
            : re >= TurbulentFrom ? Gnielinski(re)
            : LaminarNusselt + (Gnielinski(TurbulentFrom) - LaminarNusselt) * (re - LaminarBelow) / (TurbulentFrom - LaminarBelow);
        return nusselt * WPerMK / boreM;
    }

    /// <summary>Conductance from the air to the soil's edge at the pipe, per metre [W/(m·K)]: film and wall in series.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="flowM3PerS">Flow in this pipe [m³/s], above 0.</param>
    public static double ToSoilWPerMK(EarthPipeNumbers pipe, double flowM3PerS)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        var film = pipe.FilmFactor * FilmWPerM2K(pipe.BoreM, flowM3PerS) * Math.PI * pipe.BoreM;
        return 1 / (1 / film + Math.Log(pipe.OuterM / pipe.BoreM) / (2 * Math.PI * pipe.WallWPerMK));
    }

    /// <summary>Transfer units of one pipe whose soil's edge has one temperature.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="lengthM">Its length [m].</param>
    /// <param name="flowM3PerS">Flow in it [m³/s], above 0.</param>
    public static double TransferUnits(EarthPipeNumbers pipe, double lengthM, double flowM3PerS) =>
        ToSoilWPerMK(pipe, flowM3PerS) * lengthM / (JPerM3K * flowM3PerS);

    /// <summary>Share of the difference between inlet and soil's edge that the air gives up: 1 − exp(−NTU).</summary>
    /// <param name="transferUnits">Transfer units, 0 or more.</param>
    public static double Effectiveness(double transferUnits) => -Math.Exp(-transferUnits) + 1;

    /// <summary>Pressure lost in one pipe, ends included [Pa]: (f L/D + 1.5) ρ v²/2, f with the pipe's factor.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="lengthM">Its length [m].</param>
    /// <param name="flowM3PerS">Flow in it [m³/s], 0 or more.</param>
    public static double DropPa(EarthPipeNumbers pipe, double lengthM, double flowM3PerS)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        if (flowM3PerS <= 0)
            return 0;
        var factor = pipe.FrictionFactor * Friction(Reynolds(pipe.BoreM, flowM3PerS));
        return (factor * lengthM / pipe.BoreM + EndHeads) * DensityKgPerM3 * Square(SpeedMPerS(pipe.BoreM, flowM3PerS)) / 2;
    }

    /// <summary>Flow of a fan through pipes side by side [m³/s]; its pressure falls as the square of the flow.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="lengthM">Length of each [m].</param>
    /// <param name="count">How many, at least 1.</param>
    /// <param name="headAtNoFlowPa">Pressure of the fan at no flow [Pa].</param>
    /// <param name="flowAtNoHeadM3PerS">Its flow against no pressure [m³/s].</param>
    public static double FanFlowM3PerS(EarthPipeNumbers pipe, double lengthM, int count, double headAtNoFlowPa, double flowAtNoHeadM3PerS)
    {
        var (low, high) = (0.0, flowAtNoHeadM3PerS);
        for (var round = 0; round < 60; round++)
        {
            var middle = (low + high) / 2;
            if (headAtNoFlowPa * (1 - Square(middle / flowAtNoHeadM3PerS)) > DropPa(pipe, lengthM, middle / count))
                low = middle;
            else
                high = middle;
        }

        return low;
    }

    // Gnielinski's formula, smooth pipe.
    private static double Gnielinski(double re)
    {
        const double prandtl = JPerKgK * ViscosityPaS / WPerMK;
        var eighth = Friction(re) / 8;
        return eighth * (re - 1000) * prandtl / (1 + 12.7 * Math.Sqrt(eighth) * (Math.Pow(prandtl, 2.0 / 3) - 1));
    }

    private static double Square(double x) => x * x;
}
