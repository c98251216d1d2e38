using System.Globalization;
using System.Text;
using DesignSearch.Climate.Stations;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>
/// The twelve means of a station as the table [climate] of a scenario, ready to paste. A figure that a scenario would refuse (a polar
/// night's sun, a daily low within a degree of its mean) is moved to the nearest that it takes.
/// </summary>
/// <param name="station">The station.</param>
public sealed class ClimatePart(Station station)
{
    /// <summary>Mean air [°C], January first.</summary>
    public IReadOnlyList<double> MeanAirC { get; } = [.. station.Months.Select(m => Rounded(ClimateRange.Air.Nearest(m.MeanC), 1))];

    /// <summary>Mean daily low as a minimum thermometer shows it [°C].</summary>
    public IReadOnlyList<double> MeanDailyLowC { get; } = [.. station.Months.Select(Low)];

    /// <summary>Sun on the level [kWh/m² a day].</summary>
    public IReadOnlyList<double> SunKwhPerM2Day { get; } = [.. station.Months.Select(m => Rounded(ClimateRange.Sun.Nearest(m.GhiKwhPerM2Day), 2))];

    /// <summary>Wind at 10 m [m/s].</summary>
    public IReadOnlyList<double> WindMPerS { get; } = [.. station.Months.Select(m => Rounded(ClimateRange.Wind.Nearest(m.WindMPerS), 1))];

    /// <summary>Relative humidity [%].</summary>
    public IReadOnlyList<double> HumidityPct { get; } = [.. station.Months.Select(m => Rounded(ClimateRange.Humidity.Nearest(m.HumidityPercent), 0))];

    /// <summary>Lowest hour of the typical year [°C].</summary>
    public double LowestC { get; } = Rounded(station.LowestC, 1);

    /// <summary>How far the daily means of the typical year stray [K]; none where it is not known.</summary>
    public IReadOnlyList<double>? DailyMeanSpreadK { get; } =
        station.Spread is { } spread ? [.. spread.MeanSdK.Select(s => Rounded(ClimateRange.MeanSpread.Nearest(s), 1))] : null;

    /// <summary>The part as text.</summary>
    /// <param name="remarks">What should stand above it, a line each.</param>
    public string Text(IEnumerable<string> remarks)
    {
        var text = new StringBuilder();
        foreach (var line in ClimatePartWords.Head(station).Concat(remarks))
            text.Append("# ").Append(line).Append('\n');
        text.Append("[climate]\n");
        Row("mean_air_c", MeanAirC, "0.0");
        Row("mean_daily_low_c", MeanDailyLowC, "0.0");
        Row("sun_kwh_per_m2_day", SunKwhPerM2Day, "0.00");
        Row("wind_m_per_s", WindMPerS, "0.0");
        Row("humidity_pct", HumidityPct, "0");
        foreach (var line in ClimatePartWords.Lowest(LowestC))
            text.Append("# ").Append(line).Append('\n');
        if (DailyMeanSpreadK is not null)
        {
            foreach (var line in ClimatePartWords.Spread)
                text.Append("# ").Append(line).Append('\n');
            text.Append("# ");
            Row("daily_mean_spread_k", DailyMeanSpreadK, "0.0");
        }

        return text.ToString();

        void Row(string key, IReadOnlyList<double> figures, string format) =>
            text.Append(key).Append(" = [").AppendJoin(", ", figures.Select(f => f.ToString(format, CultureInfo.InvariantCulture))).Append("]\n");
    }

    private static double Low(MonthMeans month) =>
        Rounded(ClimateRange.DailyLow.Nearest(Math.Min(month.MeanDailyLowC, Rounded(month.MeanC, 1) - ClimateRange.LeastDepthK)), 1);

    // No figure is written as -0.
    private static double Rounded(double value, int decimals) => Math.Round(value, decimals) + 0.0;
}
