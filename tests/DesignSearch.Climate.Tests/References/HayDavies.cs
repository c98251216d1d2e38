namespace DesignSearch.Climate.Tests;

/// <summary>Reference: sky light on a plane after Hay and Davies (1980), the sun above 1°; the program's second opinion is held against it.</summary>
internal static class HayDavies
{
    public static double DiffuseWPerM2(double diffuse, double beamNormal, double aboveNormal, double tiltDeg, double cosIncidence, double zenithDeg)
    {
        const double rad = Math.PI / 180;
        var share = beamNormal / aboveNormal;
        return diffuse * (share * Math.Max(0, cosIncidence) / Math.Cos(zenithDeg * rad) + (1 - share) * (1 + Math.Cos(tiltDeg * rad)) / 2);
    }
}
