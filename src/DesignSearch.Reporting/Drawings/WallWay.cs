namespace DesignSearch.Reporting.Drawings;

/// <summary>The way along the walls of a house, from the gate in its gable on.</summary>
/// <param name="LengthM">Length of the house [m].</param>
/// <param name="WidthM">Its width [m].</param>
/// <param name="GateB">How far the gate is from the wall away from the sun [m].</param>
internal readonly record struct WallWay(double LengthM, double WidthM, double GateB)
{
    /// <summary>Ways along the walls at which they turn, from the gate on [m].</summary>
    public IEnumerable<double> Corners()
    {
        var at = GateB;
        for (var round = 0; round < 8; round++)
        {
            yield return at;
            at += round % 2 == 0 ? LengthM : WidthM;
        }
    }

    /// <summary>A point of the walls so far from the gate, by the wall away from the sun first, and outward from there.</summary>
    public (double A, double B, double OutA, double OutB) At(double metres)
    {
        var left = metres % (2 * (LengthM + WidthM));
        if (left <= GateB)
            return (0, GateB - left, -1, 0);
        left -= GateB;
        if (left <= LengthM)
            return (left, 0, 0, -1);
        left -= LengthM;
        if (left <= WidthM)
            return (LengthM, left, 1, 0);
        left -= WidthM;
        return left <= LengthM ? (LengthM - left, WidthM, 0, 1) : (0, WidthM - (left - LengthM), -1, 0);
    }
}
