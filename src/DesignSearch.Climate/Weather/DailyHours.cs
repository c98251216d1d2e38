using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Makes hours out of the highs and lows of days.</summary>
internal static class DailyHours
{
    private const int HoursOfDay = 24;
    private const double MostTurned = 0.05;

    /// <summary>One row an hour, the air running through the extremes of every day as <see cref="TemperatureCurve"/> has it; days without both are gaps.</summary>
    /// <param name="path">The file, for faults.</param>
    /// <param name="table">One row a day, its stamp anywhere in the day.</param>
    /// <param name="place">For sunrise and sunset.</param>
    /// <param name="stampZoneHours">Zone of the days [h].</param>
    /// <param name="faults">Takes what cannot be.</param>
    /// <param name="repairs">Takes sentences.</param>
    public static SourceTable Of(string path, SourceTable table, Place place, double stampZoneHours, FaultList faults, List<string> repairs)
    {
        DailyScale.Check(path, table, place, faults);
        var (high, low) = (table.Values[WeatherField.High], table.Values[WeatherField.Low]);
        var first = table.Stamps.Min().Date;
        var count = (int)(table.Stamps.Max().Date - first).TotalDays + 1;
        var row = new int[count];
        var (turned, twice, firstTurned) = (0, 0, 0);
        for (var r = 0; r < table.Stamps.Length; r++)
        {
            var day = (int)(table.Stamps[r].Date - first).TotalDays;
            if (high[r] < low[r])
            {
                firstTurned = turned == 0 ? table.Lines[r] : firstTurned;
                (high[r], low[r], turned) = (double.NaN, double.NaN, turned + 1);
            }

            twice += row[day] > 0 ? 1 : 0;
            row[day] = row[day] > 0 ? row[day] : r + 1;
        }

        var days = new SyntheticDays(place with { ZoneHours = stampZoneHours }, first, count);
        var known = new bool[count];
        for (var d = 0; d < count; d++)
        {
            known[d] = row[d] > 0 && !double.IsNaN(high[row[d] - 1]) && !double.IsNaN(low[row[d] - 1]);
            // A gap takes its neighbour's extremes, so that the nights beside it stay whole; its own hours are none.
            (days.High[d], days.Low[d]) = known[d] ? (high[row[d] - 1], low[row[d] - 1]) : d > 0 ? (days.High[d - 1], days.Low[d - 1]) : (0, 0);
        }

        for (var d = count - 2; d >= 0; d--)
        {
            if (!known[d] && known[d + 1])
                (days.High[d], days.Low[d]) = (days.High[d + 1], days.Low[d + 1]);
        }

        var hours = TemperatureCurve.Hours(days);
        for (var h = 0; h < hours.Length; h++)
            hours[h] = known[h / HoursOfDay] ? hours[h] : double.NaN;
        repairs.Add(
            "The file has the highs and lows of days only: its hours were made from them by a sine by day and an exponential by night, right to about "
                + "2 K (rms); a cold spell keeps its depth, the hour of its lowest is a guess.");
        if (turned > MostTurned * table.Stamps.Length)
            faults.Add(
                path, firstTurned, 0, "",
                FormattableString.Invariant($"a high above the low of its day; on {turned} days it is below it (columns exchanged, or their sign is swapped?)"));
        else if (turned > 0)
            repairs.Add(FormattableString.Invariant($"On {turned} days the low is above the high; they were taken as gaps."));
        if (twice > 0)
            repairs.Add(FormattableString.Invariant($"{twice} days stand twice; the first was taken."));
        return new()
        {
            Stamps = [.. Enumerable.Range(0, hours.Length).Select(h => first.AddHours(h))],
            Lines = [.. Enumerable.Range(0, hours.Length).Select(h => row[h / HoursOfDay] > 0 ? table.Lines[row[h / HoursOfDay] - 1] : 0)],
            IsTypical = false,
            IsUtc = table.IsUtc,
            Years = table.Years,
            Values = new() { [WeatherField.Air] = hours },
        };
    }
}
