namespace DesignSearch.Parts.Hydraulics;

/// <summary>Propylene glycol in water, by its share of the mass.</summary>
public static class PropyleneGlycol
{
    /// <summary>The most that is mixed: more takes neither heat nor cold better [0…1] (makers' practice, from memory).</summary>
    public const double MostShare = 0.5;

    private static readonly (double Share, double C)[] Freezes =
    [
        (0, 0), (0.1, -2.9), (0.15, -4.9), (0.2, -7.2), (0.25, -9.8),
        (0.3, -12.8), (0.35, -16.3), (0.4, -20.6), (0.45, -25.8), (0.5, -32.2),
    ];

    /// <summary>Temperature at which ice begins to form [°C]; between the rows of a table of Melinder 2010 (0.3 K).</summary>
    /// <param name="share">Share of the mass [0…0.5]; held at the ends.</param>
    public static double FreezesAtC(double share)
    {
        var s = Math.Clamp(share, 0, MostShare);
        var i = 1;
        while (Freezes[i].Share < s)
            i++;
        var (low, high) = (Freezes[i - 1], Freezes[i]);
        return low.C + ((s - low.Share) / (high.Share - low.Share) * (high.C - low.C));
    }
}
