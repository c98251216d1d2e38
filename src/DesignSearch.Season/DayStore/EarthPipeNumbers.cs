namespace DesignSearch.Season.DayStore;

/// <summary>A pipe of a day-heat store.</summary>
/// <param name="BoreM">Bore [m], above 0.</param>
/// <param name="OuterM">Outer diameter [m], above the bore.</param>
/// <param name="WallWPerMK">Conductivity of the wall [W/(m·K)], above 0.</param>
/// <param name="FrictionFactor">Friction as a factor on that of a smooth pipe.</param>
/// <param name="FilmFactor">Film as a factor on that of a smooth pipe.</param>
public sealed record EarthPipeNumbers(double BoreM, double OuterM, double WallWPerMK, double FrictionFactor, double FilmFactor);
