using System.Globalization;
using DesignSearch.Climate.Weather;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Cli;

/// <summary>What <c>weather</c> says of a record, as text.</summary>
internal static class WeatherText
{
    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    private static readonly (WeatherField Field, string Name)[] Fields =
    [
        (WeatherField.Air, "air temperature"), (WeatherField.Global, "sun"), (WeatherField.Diffuse, "diffuse part"),
        (WeatherField.DewPoint, "humidity"), (WeatherField.Wind, "wind"),
    ];

    /// <summary>Writes it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="record">The record.</param>
    public static void Tell(TextWriter output, WeatherRecord record)
    {
        var (place, summary) = (record.Place, record.Summary);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{place.Name}: {Math.Abs(place.LatitudeDeg):0.00}° {(place.LatitudeDeg < 0 ? "south" : "north")}, "
                + $"{Math.Abs(place.LongitudeDeg):0.00}° {(place.LongitudeDeg < 0 ? "west" : "east")}, {place.ElevationM:0} m, "
                + $"standard time UTC{place.ZoneHours:+0.##;-0.##;+0}"));
        output.WriteLine($"{record.Source}; {record.Period}");
        foreach (var doubt in record.Doubts)
            output.WriteLine("In doubt: " + doubt);
        output.WriteLine();
        output.WriteLine("month   mean °C   lowest °C   sun kWh/m² a day   wind m/s   hours below 0 °C");
        foreach (var month in summary.Months)
        {
            var air = Written.Sentence($"{Months[month.Month - 1],-5}{month.MeanC,10:0.0}{month.LowestC,12:0.0}");
            var rest = Written.Sentence($"{month.GhiKwhPerM2Day,19:0.00}{month.MeanWindMPerS,11:0.0}{month.FrostHours,19:0}");
            output.WriteLine(air + rest);
        }

        output.WriteLine();
        output.WriteLine(FormattableString.Invariant($"Hours below 0 °C in all: {summary.FrostHours:0}"));
        output.WriteLine(Written.Sentence(
            $"Coldest day {summary.ColdestDayC:0.0} °C, coldest 3 days {summary.ColdestThreeDaysC:0.0} °C,",
            $"coldest 7 days {summary.ColdestWeekC:0.0} °C (means)"));
        Spells(output, "Cold spells", record.ColdSpells, record.IsTypicalYear);
        Spells(output, "Dark runs in the cold half of the year", record.DarkRuns, record.IsTypicalYear);
        output.WriteLine("Where the figures come from:");
        foreach (var (field, name) in Fields)
            output.WriteLine($"  {name + ":",-17}{record.SharesInWords(field)}");
        output.WriteLine(record.SunFit.Sentence);
        output.WriteLine(record.Repairs.Count == 0 ? "Nothing had to be repaired." : "What was repaired, or should be known:");
        foreach (var repair in record.Repairs)
            output.WriteLine("  - " + repair);
    }

    // The months of a typical year are of years of their own; among many real winters the year tells one spell from another.
    private static void Spells(TextWriter output, string title, IReadOnlyList<WeatherSpell> spells, bool typical)
    {
        if (spells.Count == 0)
            return;
        output.WriteLine(title + ":");
        foreach (var spell in spells)
        {
            var first = spell.First.ToString(typical ? "d MMMM" : "d MMMM yyyy", CultureInfo.InvariantCulture);
            output.WriteLine(Written.Sentence(
                $"  {spell.Days,2} {Written.Noun(spell.Days, "day")} from {first}: mean {spell.MeanC:0.0} °C,",
                $"lowest {spell.LowestC:0.0} °C, sun {spell.SunKwhPerM2Day:0.0} kWh/m² a day"));
        }
    }
}
