namespace DesignSearch.Climate.Sun;

/// <summary>How much air a sunbeam crosses, against the sun overhead.</summary>
public static class AirMass
{
    /// <summary>Relative optical air mass after F. Kasten and A. T. Young, Applied Optics 28 (1989).</summary>
    /// <param name="zenithDeg">Apparent zenith distance [°]; anything lower than the horizon counts as the horizon.</param>
    /// <returns>1 to about 38.</returns>
    public static double KastenYoung(double zenithDeg)
    {
        var z = Math.Min(zenithDeg, 90);
        return 1 / (Math.Cos(z * Math.PI / 180) + 0.50572 * Math.Pow(96.07995 - z, -1.6364));
    }
}
