namespace DesignSearch.Parts.Mechanics;

/// <summary>
/// Force coefficients of a roof of one slope without walls: EN 1991-1-4, 7.3, table 7.6, the whole force. Linear between the slopes of
/// the table and between an empty and a blocked space below. National annexes may change them.
/// </summary>
public static class Monopitch
{
    /// <summary>The steepest slope of the table [°].</summary>
    public const double SteepestDeg = 30;

    private const double StepDeg = 5;

    private static readonly double[] Presses = [0.2, 0.4, 0.5, 0.7, 0.8, 1.0, 1.2];
    private static readonly double[] LiftsEmpty = [0.5, 0.7, 0.9, 1.1, 1.3, 1.6, 1.8];
    private static readonly double[] LiftsBlocked = [1.3, 1.4, 1.4, 1.4, 1.4, 1.4, 1.4];

    /// <summary>Coefficient of the force towards the ground.</summary>
    /// <param name="tiltDeg">Slope [°], 0 to 30.</param>
    public static double Down(double tiltDeg) => At(Presses, tiltDeg);

    /// <summary>Coefficient of the force away from the ground, as a positive figure.</summary>
    /// <param name="tiltDeg">Slope [°], 0 to 30.</param>
    /// <param name="blockage">How much of the space below is blocked towards the lee [0…1].</param>
    public static double Up(double tiltDeg, double blockage) =>
        ((1 - blockage) * At(LiftsEmpty, tiltDeg)) + (blockage * At(LiftsBlocked, tiltDeg));

    private static double At(double[] table, double tiltDeg)
    {
        var steps = Math.Clamp(tiltDeg, 0, SteepestDeg) / StepDeg;
        var below = Math.Min((int)steps, table.Length - 2);
        return table[below] + ((steps - below) * (table[below + 1] - table[below]));
    }
}
