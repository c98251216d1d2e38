namespace DesignSearch.Layouts.Scenarios;

/// <summary>What a monthly figure of [climate] may be.</summary>
/// <param name="Least">The least.</param>
/// <param name="Most">The most.</param>
internal sealed record ClimateRange(double Least, double Most)
{
    /// <summary>A daily low lies at least so far under the mean of its month [K].</summary>
    public const double LeastDepthK = 1;

    /// <summary>Mean air [°C].</summary>
    public static readonly ClimateRange Air = new(-40, 40);

    /// <summary>Mean daily low [°C].</summary>
    public static readonly ClimateRange DailyLow = new(-50, 35);

    /// <summary>Sun on the level [kWh/m² a day].</summary>
    public static readonly ClimateRange Sun = new(0.02, 10);

    /// <summary>Wind at 10 m [m/s].</summary>
    public static readonly ClimateRange Wind = new(0.1, 20);

    /// <summary>Relative humidity [%].</summary>
    public static readonly ClimateRange Humidity = new(5, 100);

    /// <summary>Standard deviation of the daily means [K].</summary>
    public static readonly ClimateRange MeanSpread = new(0.3, 12);

    /// <summary>Coldest night of an average month [°C].</summary>
    public static readonly ClimateRange ColdestNight = new(-60, 30);

    /// <summary>The nearest figure that is allowed.</summary>
    public double Nearest(double value) => Math.Clamp(value, Least, Most);
}
