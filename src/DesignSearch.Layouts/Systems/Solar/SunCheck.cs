using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Whether the collector looks to the side of the equator.</summary>
internal static class SunCheck
{
    // Between the tropics the noon sun stands on either side.
    private const double TropicDeg = 23.44;
    private const double SouthDeg = 180;
    private const double NorthDeg = 0;
    private const double MostOffDeg = 90;

    // A collector that looks sideways by a hair misses the rule by something.
    private const double LeastMiss = -0.001;

    public static Check Of(double azimuthDeg, double latitudeDeg)
    {
        var isNorthern = latitudeDeg >= 0;
        var noon = isNorthern ? SouthDeg : NorthDeg;
        var off = Math.Abs(((azimuthDeg - noon + 540) % 360) - 180);
        var serves = Math.Abs(latitudeDeg) <= TropicDeg || off <= MostOffDeg;
        var margin = 1 - (off / MostOffDeg);
        var words = SolarCheckWords.FacesSun(azimuthDeg, off, noon, isNorthern);
        return SolarRules.FacesSun.Found(serves, serves ? Math.Max(0, margin) : Math.Min(LeastMiss, margin), words);
    }
}
