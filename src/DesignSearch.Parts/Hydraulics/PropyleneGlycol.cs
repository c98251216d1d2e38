namespace DesignSearch.Parts.Hydraulics;

/// <summary>Propylene glycol in water, by its share of the mass.</summary>
public static class PropyleneGlycol
{
    /// <summary>The most that is mixed: more takes neither heat nor cold better [0…1] (makers' practice, from memory).</summary>
    public const double MostShare = 0.5;

    // Of the pure fluid at 20 °C [kg/L], and how the specific heat falls with the share [J/(kg·K)] (both from memory, 3 %).
    private const double PureKgPerL = 1.036;
    private const double HeatFallJPerKgK = 1340;

    // How much more a mix rubs in a pipe than water at 30 °C, per share (estimate).
    private const double FrictionPerShare = 1.25;

    private static readonly (double Share, double C)[] Freezes =
    [
        (0, 0), (0.1, -2.9), (0.15, -4.9), (0.2, -7.2), (0.25, -9.8), (0.3, -12.8), (0.35, -16.3),
        (0.4, -20.6), (0.45, -25.8), (0.5, -32.2),
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

    /// <summary>Share of the volume that is poured in for a share of the mass [0…1].</summary>
    /// <param name="share">Share of the mass [0…1].</param>
    public static double VolumeShare(double share) => share / PureKgPerL / ((share / PureKgPerL) + 1 - share);

    /// <summary>Specific heat of the mix [J/(kg·K)].</summary>
    /// <param name="share">Share of the mass [0…0.5].</param>
    /// <param name="waterJPerKgK">That of water [J/(kg·K)].</param>
    public static double HeatJPerKgK(double share, double waterJPerKgK) => waterJPerKgK - (HeatFallJPerKgK * share);

    /// <summary>Pressure that a mix loses in a pipe, over that of water at 30 °C.</summary>
    /// <param name="share">Share of the mass [0…0.5].</param>
    public static double FrictionOverWater(double share) => 1 + (FrictionPerShare * share);
}
