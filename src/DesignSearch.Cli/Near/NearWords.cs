using DesignSearch.Climate.Stations;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Cli.Near;

/// <summary>What is said about stations near a place.</summary>
internal static class NearWords
{
    public const string Elsewhere =
        "Elsewhere ask weather --at LATITUDE,LONGITUDE, or look for the climate normals of your national weather service";

    /// <summary>What the nearest station is worth at the place, and what to take care of.</summary>
    public static string[] Remarks(NearStation station, StationWorth? worth)
    {
        if (worth is null)
        {
            return
            [
                Written.Sentence(
                    $"The nearest station is {station.DistanceKm:0} km away and tells nothing about this place;",
                    $"no means are given."),
                Elsewhere + ".",
            ];
        }

        return [.. Distance(station, worth), .. Height(station)];
    }

    public static string NoSuch(string? like) =>
        $"a place of the table{(like is null ? "" : $" (did you mean '{like}'?)")}, which holds towns of the United States, "
            + "or LATITUDE,LONGITUDE. " + Elsewhere;

    public static string Several(IReadOnlyList<Station> found, int shown) =>
        $"one place; {found.Count} stations far from each other are called so: "
            + string.Join("; ", found.Take(shown).Select(s => s.Place.Name))
            + $"{(found.Count > shown ? "; …" : "")}. Name the state too, or give LATITUDE,LONGITUDE";

    public static string Nearer(double distanceKm) => Written.Sentence(
        $"a place nearer to a station; the nearest is {distanceKm:0} km away and tells nothing about this one. {Elsewhere}");

    public static string Title(NearReport report) => Written.Sentence(
        $"Stations nearest to {report.Place} ({report.LatitudeDeg:0.##}, {report.LongitudeDeg:0.##}{Height(report.ElevationM)}):");

    public const string Columns = "      km   height m   higher by m   station";

    public static string Row(NearStation station)
    {
        var higher = station.HigherM is { } m ? Written.Number(m) : "?";
        return Written.Sentence($"{station.DistanceKm,8:0}{station.ElevationM,11:0}{higher,14}   {station.Name}");
    }

    public static string Saved(string file) => $"Saved as {file}: put it in the place of [climate] in your scenario.";

    private static string Height(double? elevationM) => elevationM is { } height ? Written.Sentence($", {height:0} m") : "";

    private static IEnumerable<string> Distance(NearStation station, StationWorth worth)
    {
        var (km, low, sun) = (station.DistanceKm, worth.LowK, 100 * worth.SunShare);
        if (km > StationWorth.NearKm)
            yield return Written.Sentence($"TAKE CARE: the nearest station is {km:0} km away.");
        yield return Written.Sentence(
            $"At like height, the winter lows of stations up to {worth.UpToKm:0} km apart differ by {low:0.0} K,");
        yield return Written.Sentence($"their sun by {sun:0} % (root mean square of all such pairs of the table).");
        if (km > StationWorth.FirstLookKm)
            yield return "So far off they are good for a first look, not to buy by.";
        else if (km > StationWorth.NearKm)
            yield return Written.Sentence($"To be on the safe side take {low:0} K off the daily lows, and ask neighbours for theirs.");
    }

    private static IEnumerable<string> Height(NearStation station)
    {
        if (station.HigherM is not { } higher)
        {
            yield return Written.Sentence(
                $"The station stands at {station.ElevationM:0} m.",
                $"With --height METRES you are told what a place at another is to expect.");
            yield break;
        }

        if (Math.Abs(higher) <= StationWorth.SameHeightM)
            yield break;
        var colder = StationWorth.ColderK(-higher);
        var where = higher > 0 ? "higher" : "lower";
        yield return Written.Sentence($"TAKE CARE: the station stands {Math.Abs(higher):0} m {where} than the place.");
        yield return Written.Sentence(
            $"{(colder > 0 ? "Take" : "Add")} {Math.Abs(colder):0.0} K {(colder > 0 ? "off" : "to")} mean_air_c and mean_daily_low_c",
            $"({StationWorth.ColderK(1000):0.0} K a kilometre, from the winters of the table's stations).");
        yield return "On clear calm nights it is the other way round: a valley or a hollow is colder than the slope above it.";
    }
}
