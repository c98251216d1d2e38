namespace DesignSearch.Climate.Winters;

/// <summary>Hours of weather on their way to become a winter.</summary>
internal sealed record HourWeather(double[] AirC, double[] DewPointC, double[] WindMPerS, double[] GlobalWPerM2, double[] DiffuseWPerM2, double[]? SkyLongWaveWPerM2)
{
    /// <summary>Beam normal to the sun where it is known beside global and diffuse [W/m²]; NaN, or none, where it follows from them.</summary>
    public double[]? BeamNormalWPerM2 { get; init; }

    /// <summary>Covered part of the sky where it is known beside its long-wave light, 0 to 1; none where the clearness of the days tells it.</summary>
    public double[]? Cover { get; init; }

    public int Hours => AirC.Length;
}
