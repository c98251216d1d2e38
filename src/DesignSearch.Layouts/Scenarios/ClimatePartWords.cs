using DesignSearch.Climate.Stations;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>What is said about the twelve means of a station.</summary>
internal static class ClimatePartWords
{
    public static readonly string[] Spread =
    [
        "How far single days of its typical year stray from the mean of their month. Silence is at least as good:",
        "the program then takes it from all stations of like climate nearby.",
    ];

    public static string[] Head(Station station)
    {
        var place = station.Place;
        return
        [
            Written.Sentence(
                $"Twelve means, January first, of the station {place.Name}",
                $"({place.LatitudeDeg:0.##}, {place.LongitudeDeg:0.##}, {place.ElevationM:0} m, UTC{Zone(place.ZoneHours)})."),
            $"Source: {StationTable.Credit};",
            $"{StationTable.Licence}.",
        ];
    }

    public static string[] Lowest(double lowestC) =>
    [
        Written.Sentence($"Lowest hour of its typical year: {lowestC:0.0} °C. A typical year is no cold one: write lowest_known_c and"),
        "lowest_known_years only from the records of many years. Without them the table tells how cold a usual year gets.",
    ];

    private static string Zone(double hours) => (hours < 0 ? "" : "+") + Written.Formatted(hours, "0.##");
}
