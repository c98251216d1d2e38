namespace DesignSearch.Search.Tests;

/// <summary>Classic design problems of one objective; formulas in the works named beside each.</summary>
public static class SingleOptima
{
    /// <summary>Pressure vessel (Sandgren, 1990; Kannan and Kramer, 1994): two plate thicknesses in sixteenths, radius, length up to 200.</summary>
    public static FormulaProblem PressureVessel() => new(
    [
        new() { Name = "shell", Kind = VariableKind.Ordered, Levels = 100 }, new() { Name = "head", Kind = VariableKind.Ordered, Levels = 100 },
        new() { Name = "radius", Kind = VariableKind.Real, Low = 10, High = 200 }, new() { Name = "length", Kind = VariableKind.Real, Low = 10, High = 200 },
    ], 1, 3, x =>
    {
        double s = (x[0] + 1) / 16, h = (x[1] + 1) / 16, r = x[2], l = x[3];
        return ([(0.6224 * s * r * l) + (1.7781 * h * r * r) + (3.1661 * s * s * l) + (19.84 * s * s * r)],
            [Over((0.0193 * r) - s), Over((0.00954 * r) - h), Over(1 - (((Math.PI * r * r * l) + (4.0 / 3 * Math.PI * r * r * r)) / 1296000))]);
    });

    /// <summary>Speed reducer (Golinski, 1970); both shafts at least 7.3 long.</summary>
    public static FormulaProblem SpeedReducer() => new(
    [
        Real("face", 2.6, 3.6), Real("module", 0.7, 0.8), new() { Name = "teeth", Kind = VariableKind.Ordered, Levels = 12 },
        Real("length1", 7.3, 8.3), Real("length2", 7.3, 8.3), Real("shaft1", 2.9, 3.9), Real("shaft2", 5, 5.5),
    ], 1, 11, x =>
    {
        double b = x[0], m = x[1], z = x[2] + 17, l1 = x[3], l2 = x[4], d1 = x[5], d2 = x[6];
        return ([(0.7854 * b * m * m * ((3.3333 * z * z) + (14.9334 * z) - 43.0934)) - (1.508 * b * ((d1 * d1) + (d2 * d2)))
                + (7.4777 * ((d1 * d1 * d1) + (d2 * d2 * d2))) + (0.7854 * ((l1 * d1 * d1) + (l2 * d2 * d2)))],
            [Over((27 / (b * m * m * z)) - 1), Over((397.5 / (b * m * m * z * z)) - 1), Over((1.93 * l1 * l1 * l1 / (m * z * Math.Pow(d1, 4))) - 1),
             Over((1.93 * l2 * l2 * l2 / (m * z * Math.Pow(d2, 4))) - 1), Over((Math.Sqrt(Math.Pow(745 * l1 / (m * z), 2) + 16.9e6) / (110 * Math.Pow(d1, 3))) - 1),
             Over((Math.Sqrt(Math.Pow(745 * l2 / (m * z), 2) + 157.5e6) / (85 * Math.Pow(d2, 3))) - 1), Over((m * z / 40) - 1), Over((5 * m / b) - 1),
             Over((b / (12 * m)) - 1), Over((((1.5 * d1) + 1.9) / l1) - 1), Over((((1.1 * d2) + 1.9) / l2) - 1)]);
    });

    /// <summary>Tension spring (Arora, 1989).</summary>
    public static FormulaProblem Spring() => new(FormulaProblem.Reals((0.05, 2), (0.25, 1.3), (2, 15)), 1, 4, x =>
    {
        double w = x[0], d = x[1], n = x[2];
        return ([(n + 2) * d * w * w],
            [Over(1 - (d * d * d * n / (71785 * Math.Pow(w, 4)))), Over((((4 * d * d) - (w * d)) / (12566 * ((d * w * w * w) - Math.Pow(w, 4)))) + (1 / (5108 * w * w)) - 1),
             Over(1 - (140.45 * w / (d * d * n))), Over(((w + d) / 1.5) - 1)]);
    });

    /// <summary>Welded beam (Ragsdell and Phillips, 1976; limits and variables as in Coello, 2000): weld height and length, beam height and breadth.</summary>
    public static FormulaProblem WeldedBeam() => new(FormulaProblem.Reals((0.1, 2), (0.1, 10), (0.1, 10), (0.1, 2)), 1, 7, x =>
    {
        const double load = 6000, reach = 14, young = 30e6, shear = 12e6;
        double h = x[0], l = x[1], t = x[2], b = x[3], middle = (h + t) / 2;
        var direct = load / (Math.Sqrt(2) * h * l);
        var radius = Math.Sqrt((l * l / 4) + (middle * middle));
        var turning = load * (reach + (l / 2)) * radius / (2 * Math.Sqrt(2) * h * l * ((l * l / 12) + (middle * middle)));
        var weld = Math.Sqrt((direct * direct) + (direct * turning * l / radius) + (turning * turning));
        var bending = 6 * load * reach / (b * t * t);
        var sag = 4 * load * reach * reach * reach / (young * t * t * t * b);
        var buckling = 4.013 * young * t * b * b * b / 6 / (reach * reach) * (1 - (t / (2 * reach) * Math.Sqrt(young / (4 * shear))));
        return ([(1.10471 * h * h * l) + (0.04811 * t * b * (reach + l))],
            [Over((weld / 13_600) - 1), Over((bending / 30_000) - 1), Over(h - b), Over((0.10471 * h * h) + (0.04811 * t * b * (reach + l)) - 5), Over(0.125 - h), Over((sag / 0.25) - 1), Over((load / buckling) - 1)]);
    });

    /// <summary>Gear train (Sandgren, 1990): four wheels of 12 to 60 teeth, the square of what the ratio is off 1/6.931.</summary>
    public static FormulaProblem GearTrain() => new(FormulaProblem.Whole(49, 49, 49, 49), 1, 0, x =>
    {
        var off = (1 / 6.931) - ((x[0] + 12) * (x[1] + 12) / ((x[2] + 12) * (x[3] + 12)));
        return ([off * off], []);
    });

    private static Variable Real(string name, double low, double high) => new() { Name = name, Kind = VariableKind.Real, Low = low, High = high };

    // A constraint that cannot be computed is broken.
    private static double Over(double value) => double.IsNaN(value) ? 1e9 : Math.Max(0, value);
}
