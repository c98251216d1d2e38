namespace DesignSearch.Climate.Sun;

/// <summary>How high hills, trees and houses stand around the collector.</summary>
public sealed class HorizonProfile
{
    private readonly double[] altitudeDeg = new double[360];

    /// <summary>Runs straight between the given directions, all the way round.</summary>
    /// <param name="points">Azimuth clockwise from true north [°] and altitude of the obstacle [°, 0 to 90]; any order, at least one.</param>
    /// <exception cref="ArgumentException">No point is given.</exception>
    public HorizonProfile(IEnumerable<(double AzimuthDeg, double AltitudeDeg)> points)
    {
        var sorted = points.Select(p => (Az: (p.AzimuthDeg % 360 + 360) % 360, Alt: Math.Clamp(p.AltitudeDeg, 0, 90))).OrderBy(p => p.Az).ToArray();
        if (sorted.Length == 0)
            throw new ArgumentException("A horizon needs at least one point.", nameof(points));
        for (var a = 0; a < 360; a++)
        {
            var next = Array.FindIndex(sorted, p => p.Az >= a);
            var after = next < 0 ? (sorted[0].Az + 360, sorted[0].Alt) : sorted[next];
            var before = next > 0 ? sorted[next - 1] : next < 0 ? sorted[^1] : (sorted[^1].Az - 360, sorted[^1].Alt);
            var span = after.Item1 - before.Item1;
            altitudeDeg[a] = span <= 0 ? after.Item2 : before.Item2 + (after.Item2 - before.Item2) * (a - before.Item1) / span;
        }

        SkyShare = altitudeDeg.Average(h => Math.Pow(Math.Cos(h * Math.PI / 180), 2));
    }

    /// <summary>The same for something that is not level, of whose sky another share is left.</summary>
    /// <param name="points">As above.</param>
    /// <param name="skyShare">Share of an even sky's light that it still gets, 0 to 1.</param>
    public HorizonProfile(IEnumerable<(double AzimuthDeg, double AltitudeDeg)> points, double skyShare)
        : this(points) => SkyShare = skyShare;

    /// <summary>Share of an even sky's light that is left, 0 to 1; of a level surface's where no other was given.</summary>
    public double SkyShare { get; }

    /// <summary>Altitude of the obstacles in a direction [°].</summary>
    /// <param name="azimuthDeg">Clockwise from true north [°].</param>
    public double AltitudeAt(double azimuthDeg)
    {
        var a = (azimuthDeg % 360 + 360) % 360;
        var i = (int)a % 360;
        return altitudeDeg[i] + (altitudeDeg[(i + 1) % 360] - altitudeDeg[i]) * (a - Math.Floor(a));
    }
}
