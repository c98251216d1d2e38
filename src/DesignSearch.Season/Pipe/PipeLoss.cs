namespace DesignSearch.Season;

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
}
