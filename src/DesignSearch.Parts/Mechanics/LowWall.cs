namespace DesignSearch.Parts.Mechanics;

/// <summary>A plate that stands low and wide is a free-standing wall: EN 1991-1-4, 7.4.1, table 7.9, no openings, no corners.</summary>
public static class LowWall
{
    private const double LowUnder = 0.25;
    private const double EdgeZone = 0.3;

    // Zones A and B by length over height.
    private static readonly (double LengthOverHeight, double A, double B)[] Zones = [(3, 2.3, 1.4), (5, 2.9, 1.8), (10, 3.4, 2.1)];

    /// <summary>Whether a plate is one: its lower edge nearer to the ground than a quarter of its height, and wider than high.</summary>
    /// <param name="widthM">Width [m].</param>
    /// <param name="heightM">Height of the plate [m].</param>
    /// <param name="clearanceM">Lower edge above the ground [m].</param>
    public static bool Is(double widthM, double heightM, double clearanceM) => clearanceM < LowUnder * heightM && widthM > heightM;

    /// <summary>Coefficient of its end, as long as the plate is high: zone A on the first 0.3 of it, zone B on the rest. The end decides,
    /// since the wind may come from either side.</summary>
    /// <param name="widthM">Width [m].</param>
    /// <param name="heightM">Height of the plate [m].</param>
    public static double End(double widthM, double heightM)
    {
        var ratio = widthM / heightM;
        var above = Array.FindIndex(Zones, z => z.LengthOverHeight >= ratio);
        if (above == 0)
            return OfZones(Zones[0].A, Zones[0].B);
        if (above < 0)
            return OfZones(Zones[^1].A, Zones[^1].B);
        var (low, high) = (Zones[above - 1], Zones[above]);
        var share = (ratio - low.LengthOverHeight) / (high.LengthOverHeight - low.LengthOverHeight);
        return OfZones(low.A + (share * (high.A - low.A)), low.B + (share * (high.B - low.B)));
    }

    private static double OfZones(double a, double b) => (EdgeZone * a) + ((1 - EdgeZone) * b);
}
