using DesignSearch.Climate.Formats;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>
/// Asks whether daily highs and lows can be the tenths of °C that whole numbers in an archive mean: whole °F read as tenths still fall into the range of
/// air, and a winter of −6 °C comes out as one of +2 °C.
/// </summary>
internal static class DailyScale
{
    // Where it is never warmer than 12 °C, 120 °F as tenths, and yet hardly moves from day to night, or in a year of middle latitudes (from memory).
    private const double LeastRangeK = 2.5;
    private const double LeastWarmestC = 12;
    private const double CoolFromDeg = 55;
    private const double HighFromM = 3000;
    private const int EnoughDays = 20;
    private const double MostOfYearDays = 300;

    /// <summary>Adds a fault where they cannot.</summary>
    /// <param name="path">The file.</param>
    /// <param name="table">One row a day with high and low [°C].</param>
    /// <param name="place">Where it was read.</param>
    /// <param name="faults">Takes it.</param>
    public static void Check(string path, SourceTable table, Place place, FaultList faults)
    {
        var (high, low) = (table.Values[WeatherField.High], table.Values[WeatherField.Low]);
        var ranges = high.Zip(low, (h, l) => h - l).Where(double.IsFinite).ToList();
        if (ranges.Count < EnoughDays)
            return;
        var (range, warmest) = (ranges.Average(), high.Where(double.IsFinite).Max());
        if (warmest >= LeastWarmestC)
            return;
        if (range is >= 0 and < LeastRangeK)
            Refuse(FormattableString.Invariant($"highs and lows that lie further apart than {range:0.0} K on average"));
        else if ((table.Stamps.Max() - table.Stamps.Min()).TotalDays >= MostOfYearDays
            && Math.Abs(place.LatitudeDeg) < CoolFromDeg && place.ElevationM < HighFromM)
            Refuse(FormattableString.Invariant($"a day warmer than {warmest:0.0} °C in the year, at {Math.Abs(place.LatitudeDeg):0}° latitude"));

        void Refuse(string expected) => faults.Add(
            path, table.Lines[0], 0, "",
            expected + "; whole numbers are taken for tenths of °C here: are these whole degrees, perhaps °F? Order the file in metric units, with decimals");
    }
}
