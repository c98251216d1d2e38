namespace DesignSearch.Climate.Tests;

/// <summary>Monthly figures of the typical-year sites, worked out from open files of NSRDB and PVGIS; the files stay outside the project.</summary>
internal static class ReferenceSites
{
    private static readonly double[] ChileMean = [16.80, 16.82, 13.33, 9.89, 6.74, 4.48, 4.00, 3.12, 6.11, 9.54, 11.17, 13.49];
    private static readonly double[] ChileLow = [10.43, 11.01, 7.99, 4.83, 2.85, 1.63, 0.69, -0.32, 1.48, 4.69, 6.16, 7.77];
    private static readonly double[] ChileSun = [7.40, 6.84, 5.20, 3.45, 2.34, 1.39, 1.97, 2.75, 4.25, 5.32, 5.97, 7.51];
    private static readonly double[] ChileSdLow = [1.79, 2.73, 2.35, 2.66, 3.99, 2.70, 3.48, 3.77, 2.75, 2.66, 2.75, 2.81];
    private static readonly double[] ChileSdHigh = [3.68, 4.70, 3.23, 3.91, 2.91, 2.88, 3.16, 3.10, 3.40, 3.90, 3.43, 3.99];
    private static readonly double[] RedmondMean = [-0.21, 2.63, 3.78, 8.36, 10.28, 16.07, 19.65, 17.45, 14.45, 9.12, 1.82, 1.24];
    private static readonly double[] RedmondLow = [-4.97, -1.69, -2.15, 1.41, 2.45, 7.13, 10.39, 7.58, 3.80, 1.14, -2.95, -2.48];
    private static readonly double[] RedmondSun = [1.63, 2.36, 3.75, 5.33, 6.33, 7.44, 7.43, 6.54, 4.95, 3.29, 1.75, 1.36];
    private static readonly double[] RedmondSdLow = [5.60, 3.44, 2.46, 4.10, 3.70, 3.59, 2.77, 3.14, 3.08, 2.95, 3.61, 3.68];
    private static readonly double[] RedmondSdHigh = [4.01, 3.45, 3.70, 6.38, 4.41, 5.87, 5.42, 4.20, 5.89, 5.40, 4.71, 3.73];

    /// <summary>Andean foothills of La Araucanía: maritime, southern.</summary>
    public static MonthlyClimate Chile { get; } = Make("chile", -38.32, -71.96, -5, ChileMean, ChileLow, ChileSun, ChileSdLow, ChileSdHigh, 80, ClimateCharacter.MaritimeOrValley);

    /// <summary>High country of Oregon: dry inland, northern.</summary>
    public static MonthlyClimate Redmond { get; } = Make("redmond", 44.25, -121.167, -8, RedmondMean, RedmondLow, RedmondSun, RedmondSdLow, RedmondSdHigh, 65, ClimateCharacter.DryInland);

    public static SeasonDates SeasonOf(MonthlyClimate climate) => climate.Place.LatitudeDeg < 0 ? new(5, 1, 9, 30) : new(11, 1, 3, 31);

    private static MonthlyClimate Make(string name, double lat, double lon, double zone, double[] mean, double[] low, double[] sun, double[] sdLow, double[] sdHigh, double humidity, ClimateCharacter character) =>
        new(new(name, lat, lon, 800, zone), [.. Enumerable.Range(0, 12).Select(m => new MonthMeans(mean[m], low[m], sun[m], 2.5, humidity) { DailyLowSdK = sdLow[m], DailyHighSdK = sdHigh[m] })]) { Character = character };
}
