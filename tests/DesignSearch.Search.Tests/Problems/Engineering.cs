namespace DesignSearch.Search.Tests;

/// <summary>RE21–25 (Tanabe and Ishibuchi, 2020) and the gear train in two objectives (after Sandgren, 1990; Deb and Goyal, 1996).</summary>
public static class Engineering
{
    private static readonly double[] Areas =
    [
        .2, .31, .4, .44, .6, .62, .79, .8, .88, .93, 1, 1.2, 1.24, 1.32, 1.4, 1.55, 1.58, 1.6, 1.76, 1.8, 1.86, 2, 2.17, 2.2, 2.37, 2.4, 2.48, 2.6,
        2.64, 2.79, 2.8, 3, 3.08, 3, 10, 3.16, 3.41, 3.52, 3.6, 3.72, 3.95, 3.96, 4, 4.03, 4.2, 4.34, 4.4, 4.65, 4.74, 4.8, 4.84, 5, 5.28, 5.4, 5.53, 5.72,
        6, 6.16, 6.32, 6.6, 7.11, 7.2, 7.8, 7.9, 8, 8.4, 8.69, 9, 9.48, 10.27, 11, 11.06, 11.85, 12, 13, 14, 15,
    ];

    private static readonly double[] Wires =
    [
        .009, .0095, .0104, .0118, .0128, .0132, .014, .015, .0162, .0173, .018, .02, .023, .025, .028, .032, .035, .041, .047, .054, .063, .072, .08,
        .092, .105, .12, .135, .148, .162, .177, .192, .207, .225, .244, .263, .283, .307, .331, .362, .394, .4375, .5,
    ];

    public static FormulaProblem Gear() => new(FormulaProblem.Whole(49, 49, 49, 49), 2, 0, x =>
    {
        double a = x[0] + 12, b = x[1] + 12, c = x[2] + 12, d = x[3] + 12;
        return ([Math.Abs((1 / 6.931) - (a * b / (c * d))), Math.Max(Math.Max(a, b), Math.Max(c, d))], []);
    });

    public static FormulaProblem Re(int number) => number switch
    {
        21 => new(FormulaProblem.Reals((1, 3), (Math.Sqrt(2), 3), (Math.Sqrt(2), 3), (1, 3)), 2, 0, x => (Truss(x), [])),
        22 => new(FormulaProblem.Reals((0.2, 15), (0, 20), (0, 40)), 2, 0, x => (Concrete(x), [])),
        23 => new(FormulaProblem.Reals((1, 100), (1, 100), (10, 200), (10, 240)), 2, 0, x => (Vessel(x), [])),
        24 => new(FormulaProblem.Reals((0.5, 4), (0.5, 50)), 2, 0, x => (Hatch(x), [])),
        _ => new(FormulaProblem.Reals((1, 70), (0.6, 3), (0.09, 0.5)), 2, 0, x => (Coil(x), [])),
    };

    private static double Over(double value) => Math.Max(0, value);

    private static double[] Truss(double[] x)
    {
        var r = Math.Sqrt(2);
        return [200 * ((2 * x[0]) + (r * x[1]) + Math.Sqrt(x[2]) + x[3]), 0.01 * ((2 / x[0]) + (2 * r / x[1]) - (2 * r / x[2]) + (2 / x[3]))];
    }

    private static double[] Concrete(double[] x)
    {
        double a = Nearest(Areas, x[0]), b = x[1], h = x[2];
        return [(29.4 * a) + (0.6 * b * h), b == 0 ? 1e30 : Over(180 - (a * h) + (7.735 * a * a / b)) + Over((h / b) - 4)];
    }

    private static double[] Vessel(double[] x)
    {
        double s = Math.Round(x[0]) / 16, h = Math.Round(x[1]) / 16, r = x[2], l = x[3];
        return
        [
            (0.6224 * s * r * l) + (1.7781 * h * r * r) + (3.1661 * s * s * l) + (19.84 * s * s * r),
            Over((0.0193 * r) - s) + Over((0.00954 * r) - h) + Over(1296000 - (Math.PI * r * r * l) - (4.0 / 3 * Math.PI * r * r * r)),
        ];
    }

    private static double[] Hatch(double[] x)
    {
        double t = x[0], w = x[1], sb = 4500 / (t * w);
        return
        [
            t + (120 * w),
            Over((sb / 700) - 1) + Over((1800 / w / 450) - 1) + Over((562000 / (700000 * t * w * w) / 1.5) - 1) + Over((sb / (7000 * t * t)) - 1),
        ];
    }

    private static double[] Coil(double[] x)
    {
        double m = Math.Round(x[0]), d = x[1], w = Nearest(Wires, x[2]);
        double c = d / w, cf = (((4 * c) - 1) / ((4 * c) - 4)) + (0.615 / c), k = 11.5e6 * w * w * w * w / (8 * m * d * d * d);
        double length = (1000 / k) + (1.05 * (m + 2) * w), s = 300 / k;
        return
        [
            Math.PI * Math.PI * d * w * w * (m + 2) / 4,
            Over((8000 * cf * d / (Math.PI * w * w * w)) - 189000) + Over(length - 14) + Over(3 - c) + Over(s - 6)
                + Over(s + (700 / k) + (1.05 * (m + 2) * w) - length) + Over((700 / k) - 1.25),
        ];
    }

    private static double Nearest(double[] table, double value)
    {
        var best = table[0];
        foreach (var entry in table)
        {
            if (Math.Abs(entry - value) < Math.Abs(best - value))
                best = entry;
        }

        return best;
    }
}
