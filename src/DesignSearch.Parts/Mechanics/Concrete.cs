namespace DesignSearch.Parts.Mechanics;

/// <summary>Plain concrete of a footing.</summary>
public static class Concrete
{
    /// <summary>Weight [N/m³]: 24 kN/m³, plain (EN 1991-1-1, table A.1, from memory; 150 lb/ft³ of US practice is 23.6).</summary>
    public const double NPerM3 = 24000;

    private const double LeastM = 0.2;
    private const double MostM = 10;
    private const int Halvings = 40;

    /// <summary>
    /// Side of a square block under one post that rights the wind about its foot [m]; the soil's grip on its sides is not counted. 10 where
    /// even that does not serve.
    /// </summary>
    /// <param name="tipsNm">What tips a block of no width, as it counts [N·m].</param>
    /// <param name="tipsPerMNm">What each metre of its side adds to that [N·m/m].</param>
    /// <param name="depthM">Depth of the block [m].</param>
    /// <param name="weightN">Weight of what stands on it [N].</param>
    public static double SideM(double tipsNm, double tipsPerMNm, double depthM, double weightN)
    {
        var (low, high) = (LeastM, MostM);
        for (var i = 0; i < Halvings; i++)
        {
            var side = (low + high) / 2;
            var rights = Standing.Rights((weightN + (NPerM3 * side * side * depthM)) * side / 2);
            (low, high) = rights >= tipsNm + (tipsPerMNm * side) ? (low, side) : (side, high);
        }

        return high;
    }
}
