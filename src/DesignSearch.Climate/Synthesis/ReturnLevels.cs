namespace DesignSearch.Climate.Synthesis;

/// <summary>How cold the coldest hour and the coldest days become once in so many years, by the Gumbel distribution of yearly minima.</summary>
public static class ReturnLevels
{
    private const double Euler = 0.5772156649;

    /// <summary>Standard deviations below the mean yearly minimum: −0.16 for 2 years, 1.30 for 10.</summary>
    /// <param name="years">Return period, over 1.</param>
    public static double Factor(double years) => -Math.Sqrt(6) / Math.PI * (Euler + Math.Log(Math.Log(years / (years - 1))));

    /// <summary>Level that is undercut once in so many years.</summary>
    /// <param name="mean">Mean of the yearly minima.</param>
    /// <param name="sd">Their standard deviation.</param>
    /// <param name="years">Return period, over 1.</param>
    public static double Level(double mean, double sd, double years) => mean - Factor(years) * sd;

    /// <summary>Mean of the yearly minima when the lowest of so many years is known.</summary>
    /// <param name="lowest">Lowest seen.</param>
    /// <param name="years">In so many years; at least 1.5 is used.</param>
    /// <param name="sd">Standard deviation from year to year.</param>
    public static double MeanOfYearly(double lowest, double years, double sd) => lowest + Factor(Math.Max(1.5, years)) * sd;

    /// <summary>Mean of the coldest run of days below the mean of the coldest month, in a usual year [K]: from 31 open station years.</summary>
    /// <param name="days">1 to 7.</param>
    public static double UsualDepthK(int days) => days switch { <= 1 => 9.3, 2 => 8.3, 3 => 7.4, 4 => 6.1, 5 => 4.9, 6 => 4.8, _ => 4.7 };

    /// <summary>Share of the yearly spread that a run of days has against the lowest hour.</summary>
    /// <param name="days">1 to 7.</param>
    public static double SpreadShare(int days) => days switch { <= 1 => 1.0, 2 => 0.9, 3 => 0.8, 4 => 0.75, 5 => 0.7, 6 => 0.65, _ => 0.6 };
}
