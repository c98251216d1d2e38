using System.Globalization;
using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Winters;

/// <summary>Cuts winters out of a weather record.</summary>
internal static class RecordWinters
{
    public static IReadOnlyList<Winter> Cut(WeatherRecord record, SeasonDates season, WinterOptions options)
    {
        var ground = Ground(record);
        if (record.IsTypicalYear)
            return
            [
                Round(
                    record, season, options, ground, WinterKind.Typical, "typical",
                    "A typical year: its months come from several years, and the year goes round at New Year."),
            ];

        var winters = new List<Winter>();
        var end = record.Start.AddHours(record.Hours);
        for (var year = record.Start.Year; year <= end.Year; year++)
        {
            var (first, after) = SeasonCalendar.InYear(season, year);
            if (first < record.Start || after > end || HoldsUnknown(record, first.AddDays(-season.WarmUpDays), after))
                continue;
            winters.Add(Real(record, first, after, season.WarmUpDays, options, ground));
        }

        if (winters.Count == 0 && record.Hours >= 8760 && record.Unknown.Count == 0)
            winters.Add(Round(
                record, season, options, ground, WinterKind.Joined, "joined",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"No whole winter in the record: its two halves were joined from the ends of {record.Start.AddDays(180).Year}, "
                        + $"so the weather jumps at New Year.")));
        return winters;
    }

    private static bool HoldsUnknown(WeatherRecord record, DateTime from, DateTime to) =>
        record.Unknown.Any(u => record.Start.AddHours(u.First) < to && record.Start.AddHours(u.First + u.Count) > from);

    private static Winter Real(WeatherRecord record, DateTime first, DateTime after, int warmUpDays, WinterOptions options, GroundClimate ground)
    {
        var remarks = new List<string>([.. record.Doubts, .. record.Repairs]);
        var start = first.AddDays(-warmUpDays);
        if (start < record.Start)
        {
            start = record.Start.AddHours((24 - record.Start.Hour) % 24);
            remarks.Add(FormattableString.Invariant($"The record starts {(first - start).TotalDays:0.#} days before the season; the warm-up is that long only."));
        }

        var hours = (int)(after - start).TotalHours;
        var from = (int)(start - record.Start).TotalHours;
        var name = first.Year == after.AddDays(-1).Year ? FormattableString.Invariant($"{first.Year}") : FormattableString.Invariant($"{first.Year}-{after.Year}");
        return WinterBuilder.Build(name, WinterKind.Recorded, record.Place, start, (int)(first - start).TotalHours, Take(record, h => from + h, hours), ground, options, remarks);
    }

    private static Winter Round(WeatherRecord record, SeasonDates season, WinterOptions options, GroundClimate ground, WinterKind kind, string name, string remark)
    {
        var (first, after) = SeasonCalendar.InYear(season, TableReader.NominalYear);
        var start = first.AddDays(-season.WarmUpDays);
        var slots = YearSlots(record);
        var from = start.DayOfYear - 1;
        var weather = Take(record, h => slots[(from * 24 + h) % 8760], (int)(after - start).TotalHours);
        return WinterBuilder.Build(name, kind, record.Place, start, (int)(first - start).TotalHours, weather, ground, options, [.. record.Doubts, remark, .. record.Repairs]);
    }

    // Hour of the record for every hour of a year of 365 days; the 29th of February is left out.
    private static int[] YearSlots(WeatherRecord record)
    {
        var slots = new int[8760];
        for (var h = record.Hours - 1; h >= 0; h--)
        {
            var t = record.Start.AddHours(h);
            if (t is { Month: 2, Day: 29 })
                continue;
            slots[((new DateTime(TableReader.NominalYear, t.Month, t.Day, 0, 0, 0, DateTimeKind.Unspecified).DayOfYear - 1) * 24) + t.Hour] = h;
        }

        return slots;
    }

    private static HourWeather Take(WeatherRecord record, Func<int, int> at, int hours)
    {
        double[] Cut(double[] source)
        {
            var cut = new double[hours];
            for (var h = 0; h < hours; h++)
                cut[h] = source[at(h)];
            return cut;
        }

        return new(
            Cut(record.AirC), Cut(record.DewPointC), Cut(record.WindMPerS), Cut(record.GlobalWPerM2),
            Cut(record.DiffuseWPerM2),
            record.SkyLongWaveWPerM2 is { } sky ? Cut(sky) : null)
        {
            BeamNormalWPerM2 = Cut(record.BeamNormalWPerM2),
        };
    }

    // Months the record does not hold take the nearest month it does.
    private static GroundClimate Ground(WeatherRecord record)
    {
        var known = record.Summary.Months;
        return GroundFit.FromMonths([.. Enumerable.Range(1, 12).Select(m => known.MinBy(k => Math.Min((k.Month - m + 12) % 12, (m - k.Month + 12) % 12))!.MeanC)]);
    }
}
