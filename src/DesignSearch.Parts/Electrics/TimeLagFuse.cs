namespace DesignSearch.Parts.Electrics;

/// <summary>
/// Time-lag fuses: sizes of IEC 60127-2 sheet 3 to 6.3 A and of IEC 60269 above, the least melting times of sheet 3 for all of them.
/// </summary>
public static class TimeLagFuse
{
    /// <summary>How long a motor's start lasts, at most (common practice, no source) [s].</summary>
    public const double StartS = 0.3;

    /// <summary>
    /// A fuse of this kind is not made to run at its rating for good: its size against the running current (common practice, no source).
    /// </summary>
    public const double Spare = 1.25;

    /// <summary>
    /// What a cable must bear for each ampere of its fuse: sheet 3 is sure to melt at 2.1 times its rating, and IEC 60364-4-43, 433.1, lets
    /// that be 1.45 times what the cable bears.
    /// </summary>
    public const double CableShare = 2.1 / 1.45;

    private const double Tiny = 1e-9;

    // Times the rating, and the time for which it is sure to hold [s].
    private static readonly (double Times, double Seconds)[] Least = [(1.5, 3600), (2.75, 0.6), (4, 0.15), (10, 0.02)];

    /// <summary>The sizes [A].</summary>
    public static IReadOnlyList<double> SizesA { get; } = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 10, 16, 20, 25, 32, 40];

    /// <summary>The smallest size that carries a current for good and holds a start [A]; 0 where none does.</summary>
    /// <param name="runningA">Running current [A], 0 or more.</param>
    /// <param name="startA">Current while it starts [A].</param>
    public static double SizeFor(double runningA, double startA)
    {
        for (var i = 0; i < SizesA.Count; i++)
        {
            if (SizesA[i] >= (Spare * runningA) - Tiny && HoldsS(startA / SizesA[i]) >= StartS - Tiny)
                return SizesA[i];
        }

        return 0;
    }

    /// <summary>
    /// For how long a fuse is sure to hold a current [s]: straight lines between the points of the standard on two logarithmic scales.
    /// </summary>
    /// <param name="times">The current as times the fuse's rating, 0 or more.</param>
    public static double HoldsS(double times)
    {
        if (times <= Least[0].Times)
            return Least[0].Seconds;
        for (var i = 1; i < Least.Length; i++)
        {
            var (from, to) = (Least[i - 1], Least[i]);
            if (times <= to.Times)
                return from.Seconds * Math.Pow(to.Seconds / from.Seconds, Math.Log(times / from.Times) / Math.Log(to.Times / from.Times));
        }

        return 0;
    }
}
