namespace DesignSearch.Layouts.Design.Choices;

/// <summary>What the numbers of a scenario or layout file that is silent about them depend on.</summary>
/// <param name="LatitudeDeg">Latitude of the place [°], −90 … 90: tilt and direction of a collector.</param>
/// <param name="FrostLimitC">Limit to be held [°C]: thermostats stand above it.</param>
public readonly record struct ChoiceGround(double LatitudeDeg, double FrostLimitC);
