namespace DesignSearch.Season.Solar;

/// <summary>Heat lost by a pipe in the open air; linear resistances as in ISO 12241, film and wall on the water's side neglected.</summary>
public static class PipeLoss
{
    /// <summary>Loss per metre and kelvin [W/(m·K)].</summary>
    /// <param name="conductivityWPerMK">Conductivity of the insulation [W/(m·K)], above 0.</param>
    /// <param name="innerDiameterM">Outer diameter of the pipe, under the insulation [m], above 0.</param>
    /// <param name="outerDiameterM">Diameter over the insulation [m]; equal to the inner one for a bare pipe.</param>
    /// <param name="outsideFilmWPerM2K">Film on the outermost surface, radiation included [W/(m²K)], above 0.</param>
    public static double PerMetreK(double conductivityWPerMK, double innerDiameterM, double outerDiameterM, double outsideFilmWPerM2K)
    {
        var insulation = outerDiameterM > innerDiameterM ? Math.Log(outerDiameterM / innerDiameterM) / (2 * Math.PI * conductivityWPerMK) : 0;
        return 1 / (insulation + 1 / (Math.PI * Math.Max(outerDiameterM, innerDiameterM) * outsideFilmWPerM2K));
    }

    /// <summary>Temperature at the end of a pipe in steady flow [°C]: Ta + (Ti − Ta) exp(−U' L/(ṁ c)).</summary>
    /// <param name="waterC">Water at its beginning Ti [°C].</param>
    /// <param name="ambientC">Around it, Ta [°C].</param>
    /// <param name="lossWPerK">Loss of its whole length U' L [W/K].</param>
    /// <param name="flowHeatWPerK">Flow times specific heat ṁ c [W/K], above 0.</param>
    public static double EndC(double waterC, double ambientC, double lossWPerK, double flowHeatWPerK) => ambientC + (waterC - ambientC) * Math.Exp(-lossWPerK / flowHeatWPerK);
}
