namespace DesignSearch.Climate.Weather;

/// <summary>Finds gaps that were written as zero light with the sun well up.</summary>
internal static class DarkGaps
{
    /// <summary>Marks them as missing.</summary>
    /// <remarks>
    /// Between sunlit neighbours a zero is a gap as soon as the sun is up by about 6°; at the ends of a day it may stand behind hills, so
    /// there it must be up by about 12°. Zeros beside a gap belong to it.
    /// </remarks>
    /// <param name="global">Changed in place.</param>
    /// <param name="above">Irradiance above the atmosphere over the same intervals.</param>
    /// <returns>How many were marked.</returns>
    public static int Mark(double[] global, double[] above)
    {
        var zero = global.Select(g => g <= 0).ToArray();
        var gap = new bool[global.Length];
        for (var i = 0; i < gap.Length; i++)
        {
            var between = i > 0 && i + 1 < gap.Length && global[i - 1] > 0 && global[i + 1] > 0;
            gap[i] = zero[i] && above[i] > (between ? 150 : 280);
        }

        for (var i = 1; i < gap.Length; i++)
            gap[i] |= gap[i - 1] && zero[i] && above[i] > 30;
        for (var i = gap.Length - 2; i >= 0; i--)
            gap[i] |= gap[i + 1] && zero[i] && above[i] > 30;
        for (var i = 0; i < gap.Length; i++)
        {
            if (gap[i])
                global[i] = double.NaN;
        }

        return gap.Count(g => g);
    }
}
