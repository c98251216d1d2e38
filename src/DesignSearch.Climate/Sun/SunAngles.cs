namespace DesignSearch.Climate.Sun;

/// <summary>Where the sun's centre stands, without refraction.</summary>
/// <param name="ZenithDeg">Distance from the zenith [°], 0 to 180; above 90 the sun is down.</param>
/// <param name="AzimuthDeg">Clockwise from true north [°], 0 to 360, in both hemispheres.</param>
public readonly record struct SunAngles(double ZenithDeg, double AzimuthDeg);
