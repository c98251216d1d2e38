using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Stations;

/// <summary>A weather station of the table that comes with the program.</summary>
/// <param name="Place">Where it stands; the name with the state.</param>
/// <param name="Months">Its twelve means, January first.</param>
/// <param name="LowestC">Lowest hour mean of its typical year [°C].</param>
/// <param name="Spread">How its days differ; null where it is not given.</param>
public sealed record Station(Place Place, IReadOnlyList<MonthMeans> Months, double LowestC, StationSpread? Spread)
{
    private const double EarthKm = 6371;

    /// <summary>Way over the ground to a point [km].</summary>
    /// <param name="latitudeDeg">North positive [°].</param>
    /// <param name="longitudeDeg">East positive [°].</param>
    public double DistanceKm(double latitudeDeg, double longitudeDeg)
    {
        var (here, there) = (Place.LatitudeDeg * Math.PI / 180, latitudeDeg * Math.PI / 180);
        var (north, east) = (Math.Sin((there - here) / 2), Math.Sin((longitudeDeg - Place.LongitudeDeg) * Math.PI / 360));
        return 2 * EarthKm * Math.Asin(Math.Min(1, Math.Sqrt(north * north + Math.Cos(here) * Math.Cos(there) * east * east)));
    }
}
