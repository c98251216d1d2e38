using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Hours of cloud over made days: tied to their clearness, restless as real skies are, often wholly clear or wholly covered.</summary>
internal static class CoverMaker
{
    // A normal variable cut off at 0 and 1 (J. Tobin, Econometrica 26 (1958)), fitted to the nights of seven open typical years (TMY3: opaque cover,
    // October to April) over the clearness that runs straight from noon to noon. It leaves a site's mean cover by night within 0.07 of its own, and
    // its wholly clear hours within 0.05. The memory from hour to hour brings their correlations over one, three, six and nine hours.
    private const double Clear = 2.38;
    private const double PerClearness = 3.89;
    private const double Spread = 0.68;
    private const double Memory = 0.9;

    /// <summary>Covered part of the sky, hour by hour.</summary>
    /// <param name="days">Their clearness.</param>
    /// <param name="seed">Of the winter.</param>
    /// <returns>0 to 1.</returns>
    public static double[] Make(SyntheticDays days, ulong seed)
    {
        var cover = new double[days.Count * 24];
        var random = new XoshiroStream(seed, RandomPurpose.Cover, 0);
        var x = random.NextNormal();
        for (var h = 0; h < cover.Length; h++)
        {
            x = Memory * x + Math.Sqrt(1 - Memory * Memory) * random.NextNormal();
            cover[h] = Math.Clamp(Clear - PerClearness * SkyTemperature.ClearnessAt(days.Clearness, h + 0.5) + Spread * x, 0, 1);
        }

        return cover;
    }
}
