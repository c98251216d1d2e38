namespace DesignSearch.Parts.Mechanics;

/// <summary>What wind does to a flat plate that stands free, by EN 1991-1-4; the local code comes first.</summary>
/// <param name="Down">Force coefficient of wind that presses it down and back.</param>
/// <param name="Up">Force coefficient of wind that lifts it and pushes it forward, as a positive figure.</param>
/// <param name="OffMiddle">Share of the chord up the slope by which the resultant may lie off the middle.</param>
public readonly record struct PlateWind(double Down, double Up, double OffMiddle)
{
    /// <summary>Force coefficient of a signboard: EN 1991-1-4, 7.4.3 (1).</summary>
    public const double Signboard = 1.8;

    private const double UprightDeg = 90;
    private const double RadPerDeg = Math.PI / 180;

    /// <summary>The greater of the two coefficients.</summary>
    public double Worst => Math.Max(Down, Up);

    /// <summary>
    /// Up to 30° a roof of one slope (7.3, table 7.6; empty or blocked below, whichever is worse; the resultant at a quarter of the chord,
    /// figure 7.16); steeper a signboard (7.4.3), or a free-standing wall (7.4.1) where that is worse. A signboard's resultant lies at half
    /// height; between 30° and upright it comes there in a straight line (own choice).
    /// </summary>
    /// <param name="tiltDeg">Slope [°], 0 flat to 90 upright.</param>
    /// <param name="widthM">Width [m].</param>
    /// <param name="chordM">Length up the slope [m].</param>
    /// <param name="clearanceM">Lower edge above the ground [m].</param>
    public static PlateWind Of(double tiltDeg, double widthM, double chordM, double clearanceM)
    {
        if (tiltDeg <= Monopitch.SteepestDeg)
            return new(Monopitch.Down(tiltDeg), Math.Max(Monopitch.Up(tiltDeg, 0), Monopitch.Up(tiltDeg, 1)), WindForce.OffMiddle);
        var height = chordM * Math.Sin(tiltDeg * RadPerDeg);
        var wall = LowWall.Is(widthM, height, clearanceM) ? LowWall.End(widthM, height) : 0;
        var coefficient = Math.Max(Signboard, wall);
        var off = WindForce.OffMiddle * Math.Max(0, UprightDeg - tiltDeg) / (UprightDeg - Monopitch.SteepestDeg);
        return new(coefficient, coefficient, off);
    }
}
