namespace DesignSearch.Season;

/// <summary>Heat lost by an insulated pipe.</summary>
/// <remarks>Equation: 1/U' = ln(da/di)/(2πλ) + 1/(π da ha); film inside and wall neglected. Source: linear form of ISO 12241.</remarks>
public static class PipeLoss
{
    /// <summary>Loss per metre and kelvin [W/(m·K)].</summary>
    /// <param name="conductivityWPerMK">Insulation [W/(m·K)], above 0.</param>
    /// <param name="innerDiameterM">Diameter under the insulation [m], above 0.</param>
    /// <param name="outerDiameterM">Diameter over it [m]; equal to the inner for a bare pipe.</param>
    /// <param name="outsideFilmWPerM2K">Film outside [W/(m²K)]: 10 in still air, 25 in wind.</param>
    public static double PerMetreK(double conductivityWPerMK, double innerDiameterM, double outerDiameterM, double outsideFilmWPerM2K) =>
        1 / (Math.Log(outerDiameterM / innerDiameterM) / (2 * Math.PI * conductivityWPerMK) + 1 / (Math.PI * outerDiameterM * outsideFilmWPerM2K));

    /// <summary>Temperature at the end of a pipe [°C]: Ta + (Ti − Ta) exp(−U' L/(m c)).</summary>
    /// <param name="inC">Water at its beginning [°C].</param>
    /// <param name="ambientC">Around it [°C].</param>
    /// <param name="lossWPerMK">Loss U' [W/(m·K)].</param>
    /// <param name="lengthM">Length [m].</param>
    /// <param name="flowKgPerS">Flow [kg/s], above 0.</param>
    /// <param name="heatJPerKgK">Specific heat [J/(kg·K)].</param>
    public static double EndC(double inC, double ambientC, double lossWPerMK, double lengthM, double flowKgPerS, double heatJPerKgK) =>
        ambientC + (inC - ambientC) * Math.Exp(-lossWPerMK * lengthM / (flowKgPerS * heatJPerKgK));
}
