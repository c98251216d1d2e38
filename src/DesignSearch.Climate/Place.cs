namespace DesignSearch.Climate;

/// <summary>A point on the earth and its clock.</summary>
/// <param name="Name">For display.</param>
/// <param name="LatitudeDeg">Degrees, north positive, −90 to 90.</param>
/// <param name="LongitudeDeg">Degrees, east positive, −180 to 180.</param>
/// <param name="ElevationM">Metres above the sea.</param>
/// <param name="ZoneHours">Local standard time minus UTC in hours; never daylight saving.</param>
public sealed record Place(string Name, double LatitudeDeg, double LongitudeDeg, double ElevationM, double ZoneHours);
