using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Tests;

/// <summary>Monthly figures of the typical-year sites, worked out from open files of NSRDB and PVGIS; the files stay outside the project.</summary>
internal static class ReferenceSites
{
    private static readonly double[] ChileMean = [16.80, 16.82, 13.33, 9.89, 6.74, 4.48, 4.00, 3.12, 6.11, 9.54, 11.17, 13.49];
    private static readonly double[] ChileLow = [10.43, 11.01, 7.99, 4.83, 2.85, 1.63, 0.69, -0.32, 1.48, 4.69, 6.16, 7.77];
    private static readonly double[] ChileSun = [7.40, 6.84, 5.20, 3.45, 2.34, 1.39, 1.97, 2.75, 4.25, 5.32, 5.97, 7.51];
    private static readonly double[] ChileSdLow = [1.79, 2.73, 2.35, 2.66, 3.99, 2.70, 3.48, 3.77, 2.75, 2.66, 2.75, 2.81];
    private static readonly double[] ChileSdMean = [2.11, 3.45, 2.05, 2.42, 3.08, 1.71, 2.63, 2.57, 2.28, 2.65, 2.33, 2.88];
    private static readonly double[] RedmondMean = [-0.21, 2.63, 3.78, 8.36, 10.28, 16.07, 19.65, 17.45, 14.45, 9.12, 1.82, 1.24];
    private static readonly double[] RedmondLow = [-4.97, -1.69, -2.15, 1.41, 2.45, 7.13, 10.39, 7.58, 3.80, 1.14, -2.95, -2.48];
    private static readonly double[] RedmondSun = [1.63, 2.36, 3.75, 5.33, 6.33, 7.44, 7.43, 6.54, 4.95, 3.29, 1.75, 1.36];
    private static readonly double[] RedmondSdLow = [5.60, 3.44, 2.46, 4.10, 3.70, 3.59, 2.77, 3.14, 3.08, 2.95, 3.61, 3.68];
    private static readonly double[] RedmondSdMean = [4.37, 3.10, 2.42, 4.37, 3.04, 4.24, 3.63, 2.91, 4.02, 3.31, 3.10, 3.40];

    private static readonly double[] ItalyMean = [5.20, 6.96, 8.73, 12.36, 17.04, 22.45, 21.92, 22.15, 20.20, 14.98, 6.32, 4.05];
    private static readonly double[] ItalyLow = [1.95, 2.82, 3.68, 8.31, 12.83, 15.79, 16.89, 17.73, 15.64, 11.47, 2.81, 0.74];
    private static readonly double[] ItalySun = [1.54, 2.39, 3.82, 4.05, 4.83, 7.21, 6.62, 5.76, 4.52, 2.87, 2.02, 1.49];
    private static readonly double[] ItalySdLow = [2.74, 1.94, 2.58, 2.98, 1.66, 4.04, 2.29, 2.64, 3.06, 2.51, 2.73, 2.05];
    private static readonly double[] ItalySdMean = [1.83, 1.45, 1.93, 3.22, 1.21, 3.83, 1.81, 2.28, 2.98, 2.14, 2.80, 1.95];
    private static readonly double[] GreensboroMean = [0.33, 5.03, 11.41, 14.69, 19.03, 23.59, 25.43, 24.76, 20.08, 13.12, 10.82, 4.23];
    private static readonly double[] GreensboroLow = [-4.27, -0.08, 5.79, 7.82, 13.39, 18.97, 20.75, 20.11, 15.70, 7.80, 4.94, -1.35];
    private static readonly double[] GreensboroSun = [2.41, 3.06, 4.25, 5.41, 5.64, 6.25, 6.08, 5.61, 4.43, 3.59, 2.43, 2.24];
    private static readonly double[] GreensboroSdLow = [5.34, 7.34, 5.27, 3.58, 4.44, 1.56, 2.46, 1.89, 3.55, 4.18, 3.86, 5.41];
    private static readonly double[] GreensboroSdMean = [5.11, 7.89, 5.52, 3.56, 3.66, 1.78, 2.75, 1.76, 2.81, 3.89, 3.75, 5.74];
    private static readonly double[] ColoradoMean = [-7.80, -0.85, 4.15, 5.32, 11.44, 19.84, 23.40, 20.74, 15.03, 5.18, 2.52, -2.60];
    private static readonly double[] ColoradoSun = [1.61, 2.77, 4.68, 5.89, 6.72, 8.30, 6.89, 6.31, 5.13, 4.23, 2.55, 2.30];

    /// <summary>Andean foothills of La Araucanía: maritime, southern.</summary>
    public static MonthlyClimate Chile { get; } = Make("chile", -38.32, -71.96, 747, -5, ChileMean, ChileLow, ChileSun, ChileSdLow, ChileSdMean, 80, ClimateCharacter.MaritimeOrValley);

    /// <summary>High country of Oregon: dry inland, northern.</summary>
    public static MonthlyClimate Redmond { get; } = Make("redmond", 44.25, -121.167, 933, -8, RedmondMean, RedmondLow, RedmondSun, RedmondSdLow, RedmondSdMean, 65, ClimateCharacter.DryInland);

    /// <summary>Plain of Piedmont: damp, foggy, northern.</summary>
    public static MonthlyClimate Italy { get; } = Make("italy", 45.0, 8.0, 250, 1, ItalyMean, ItalyLow, ItalySun, ItalySdLow, ItalySdMean, 79, ClimateCharacter.MaritimeOrValley);

    /// <summary>Piedmont of North Carolina: humid, outbreaks of cold.</summary>
    public static MonthlyClimate Greensboro { get; } = Make("greensboro", 36.10, -79.95, 273, -5, GreensboroMean, GreensboroLow, GreensboroSun, GreensboroSdLow, GreensboroSdMean, 65, ClimateCharacter.HumidContinental);

    /// <summary>North-west Colorado in 2017, a hard year; its monthly means and sun only.</summary>
    public static MonthlyClimate Colorado { get; } = Make("colorado", 40.53, -108.54, 2168, -7, ColoradoMean, [.. ColoradoMean.Select(m => m - 8)], ColoradoSun, RedmondSdLow, RedmondSdMean, 60, ClimateCharacter.DryInland);

    public static MonthlyClimate Named(string site) => site switch { "chile" => Chile, "italy" => Italy, "redmond" => Redmond, "greensboro" => Greensboro, _ => Colorado };

    public static SeasonDates SeasonOf(MonthlyClimate climate) => climate.Place.LatitudeDeg < 0 ? new(5, 1, 9, 30) : new(11, 1, 3, 31);

    private static MonthlyClimate Make(string name, double lat, double lon, double elevation, double zone, double[] mean, double[] low, double[] sun, double[] sdLow, double[] sdMean, double humidity, ClimateCharacter character) =>
        new(new(name, lat, lon, elevation, zone), [.. Enumerable.Range(0, 12).Select(m => new MonthMeans(mean[m], low[m], sun[m], 2.5, humidity) { DailyLowSdK = sdLow[m], DailyMeanSdK = sdMean[m] })]) { Character = character };
}
