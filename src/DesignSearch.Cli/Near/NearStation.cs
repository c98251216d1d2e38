namespace DesignSearch.Cli.Near;

/// <summary>A station near a place, as <c>weather --near --json</c> prints it.</summary>
/// <param name="Name">Its name with its state.</param>
/// <param name="LatitudeDeg">North positive [°].</param>
/// <param name="LongitudeDeg">East positive [°].</param>
/// <param name="ElevationM">Height [m].</param>
/// <param name="DistanceKm">Way to the place [km].</param>
/// <param name="HigherM">Its height less that of the place [m]; none where that is not known.</param>
public sealed record NearStation(string Name, double LatitudeDeg, double LongitudeDeg, double ElevationM, double DistanceKm, double? HigherM);
