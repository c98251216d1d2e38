namespace DesignSearch.Climate.Winters;

/// <summary>Hours of weather on their way to become a winter.</summary>
internal sealed record HourWeather(double[] AirC, double[] DewPointC, double[] WindMPerS, double[] GlobalWPerM2, double[] DiffuseWPerM2, double[]? SkyLongWaveWPerM2)
{
    public int Hours => AirC.Length;
}
