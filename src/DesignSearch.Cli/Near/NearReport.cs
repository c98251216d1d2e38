using DesignSearch.Climate.Stations;
using DesignSearch.Layouts.Scenarios;

namespace DesignSearch.Cli.Near;

/// <summary>The stations nearest to a place and the twelve means of the first; what <c>weather --near --json</c> prints.</summary>
/// <param name="Place">The place as it was named.</param>
/// <param name="LatitudeDeg">North positive [°].</param>
/// <param name="LongitudeDeg">East positive [°].</param>
/// <param name="ElevationM">Its height [m], where it is known.</param>
/// <param name="Stations">The nearest first.</param>
/// <param name="Remarks">What the first is worth at the place, and what to take care of.</param>
/// <param name="Climate">The twelve means of the first; none where it is too far to tell anything.</param>
/// <param name="Credit">Where the figures come from, and on what terms.</param>
public sealed record NearReport(
    string Place,
    double LatitudeDeg,
    double LongitudeDeg,
    double? ElevationM,
    IReadOnlyList<NearStation> Stations,
    IReadOnlyList<string> Remarks,
    ClimatePart? Climate,
    string Credit)
{
    private const int Shown = 5;

    /// <summary>The [climate] of a scenario as text; empty where there is none.</summary>
    internal string Part() => Climate?.Text(Remarks) ?? "";

    /// <summary>Looks round.</summary>
    /// <param name="place">The place as it was named.</param>
    /// <param name="latitudeDeg">North positive [°].</param>
    /// <param name="longitudeDeg">East positive [°].</param>
    /// <param name="elevationM">Its height [m], where it is known.</param>
    internal static NearReport Of(string place, double latitudeDeg, double longitudeDeg, double? elevationM)
    {
        var nearest = StationTable.Nearest(latitudeDeg, longitudeDeg, Shown);
        var stations = nearest.Select(s => new NearStation(
            s.Place.Name, s.Place.LatitudeDeg, s.Place.LongitudeDeg, s.Place.ElevationM,
            Math.Round(s.DistanceKm(latitudeDeg, longitudeDeg), 1), s.Place.ElevationM - elevationM)).ToList();
        var worth = StationWorth.At(stations[0].DistanceKm);
        return new(
            place, latitudeDeg, longitudeDeg, elevationM, stations, NearWords.Remarks(stations[0], worth), worth is null ? null : new ClimatePart(nearest[0]),
            $"{StationTable.Credit}; {StationTable.Licence}");
    }
}
