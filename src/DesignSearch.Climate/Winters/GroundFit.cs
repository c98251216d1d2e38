namespace DesignSearch.Climate.Winters;

/// <summary>Fits the yearly wave of the ground's surface to monthly means of the air.</summary>
public static class GroundFit
{
    private static readonly double[] MiddleDay = [15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5];

    /// <summary>First harmonic of twelve monthly means, taken as the surface of the open ground.</summary>
    /// <param name="monthMeansC">Twelve, January first [°C].</param>
    public static GroundClimate FromMonths(IReadOnlyList<double> monthMeansC)
    {
        var (cos, sin) = (0.0, 0.0);
        for (var m = 0; m < 12; m++)
        {
            var angle = 2 * Math.PI * MiddleDay[m] / 365;
            cos += monthMeansC[m] * Math.Cos(angle) / 6;
            sin += monthMeansC[m] * Math.Sin(angle) / 6;
        }

        var coldest = (Math.Atan2(-sin, -cos) / (2 * Math.PI) * 365 + 365) % 365;
        return new(monthMeansC.Average(), Math.Sqrt(cos * cos + sin * sin), coldest < 1 ? coldest + 365 : coldest);
    }
}
