using DesignSearch.Search.Indicators;

namespace DesignSearch.Search.Tests;

/// <summary>What is known of a problem's exact front: its corners, its scaled hypervolume and, where it is finite, its points.</summary>
/// <param name="Ideal">Least of each objective on the front.</param>
/// <param name="Nadir">Largest of each objective on the front.</param>
/// <param name="Area">Dominated area after scaling both to 0 … 1, up to (1.1, 1.1).</param>
/// <param name="Points">All points of a finite front; else empty.</param>
public sealed record KnownFront(double[] Ideal, double[] Nadir, double Area, IReadOnlyList<double[]> Points)
{
    // Found by running all 313,528,320 combinations.
    private const string CataloguePoints = """
        2335.2993 0, 2304.2622 1, 2292.4631 2, 2248.8822 5, 2178.4676499999996 8, 2079.8790999999997 9, 2036.2981999999997 10,
        1993.08965 11, 1949.8810999999996 12, 1942.009775 14, 1906.6725499999998 15, 1863.0916499999998 16, 1819.8831 17,
        1772.7388875000001 19, 1734.7388875000001 22, 1689.8851 23, 1608.6765500000001 25, 1604.7408875 26, 1550.8885500000001 29,
        1508.9528875 30, 1457.2570999999998 34, 1449.3857750000002 38, 1414.04855 39, 1376.04855 41, 1372.1128875 43,
        1370.8400000000001 46, 1332.8400000000001 47, 1320.4171 53, 1312.545775 54, 1277.2085499999998 55, 1235.2728874999998 57,
        1228.4352250000002 60, 1196.0 61, 1162.31 62, 1063.4699999999998 68, 1051.03343125 69, 1025.4699999999998 70,
        1015.4699999999999 75, 989.9023625 78, 971.84 79, 951.9023625 80, 933.84 81, 888.63 83, 878.63 86, 839.4699999999999 88,
        835.0 89, 797.0 90, 787.0 92, 766.19343125 93, 728.19343125 94, 702.63 95, 697.0 97, 680.0324499999999 98, 611.0 99, 609.14 104,
        597.76 105, 511.86 106, 474.15999999999997 107, 473.23 110, 468.41245000000004 113, 448.53999999999996 114
        """;

    // Found by running all 49^4 combinations.
    private const string GearPoints = """
        1.64342847391863e-06 49, 1.24299841109676e-05 44, 4.85555419908468e-05 39, 8.15774828790417e-05 38, 0.000135180628615922 37,
        0.000165119671684366 36, 0.000500522929442082 35, 0.00088196554982059 32, 0.00556458781829092 31, 0.0157206752272399 30,
        0.0269454076885955 29, 0.039394144614995 28, 0.0532515394247708 27, 0.0687384267065299 26, 0.0861206752272399 25,
        0.10572067522724 24, 0.127932395454083 23, 0.153241336384265 22, 0.182251287472138 21, 0.21572067522724 20, 0.254612641986243 19,
        0.300165119671684 18, 0.353990571421012 17, 0.41822067522724 16, 0.49572067522724 15, 0.59041455277826 14, 0.7077916811444 13,
        0.85572067522724 12
        """;

    /// <summary>By problem; the catalogue and the gear are enumerated, the others scanned densely.</summary>
    public static IReadOnlyDictionary<string, KnownFront> All { get; } = new Dictionary<string, KnownFront>
    {
        ["ZDT1"] = new([0, 0], [1, 1], 0.8766661665, []),
        ["ZDT2"] = new([0, 0], [1, 1], 0.5433328333, []),
        ["ZDT3"] = new([0, -0.773369012319006], [0.851833, 1], 0.7274519943, []),
        ["ZDT4"] = new([0, 0], [1, 1], 0.8766661665, []),
        ["ZDT6"] = new([0.280775318815376, 0], [1, 0.921165220344124], 0.6164071435, []),
        ["RE21"] = new([1237.84142300054, 0.00276142374915397], [2886.3695604244, 0.04], 0.8891475986, []),
        ["RE22"] = new([5.88, 0], [361.241715, 180.01547], 0.7633210991, []),
        ["RE23"] = new([15.90180078125, 0], [5850.38306032916, 1288669.78054162], 1.1635953888, []),
        ["RE24"] = new([60.5, 0], [481.607142857143, 44.2819047619048], 1.1714233587, []),
        ["RE25"] = new([0.0375913492428691, 0], [0.403970367090113, 2224669.44241758], 1.0811754069, []),
        ["gear"] = new([1.64342847391863e-06, 12], [0.85572067522724, 49], 1.0501530507, Read(GearPoints)),
        ["catalogue"] = new([448.54, 0], [2335.2993, 114], 0.7745789840, Read(CataloguePoints)),
    };

    /// <summary>The front of some points, all that is known.</summary>
    public static KnownFront Of(IEnumerable<double[]> figures)
    {
        var points = new List<double[]>();
        foreach (var one in figures.OrderBy(f => f[0]).ThenBy(f => f[1]))
        {
            if (points.Count == 0 || one[1] < points[^1][1])
                points.Add(one);
        }

        var unit = new KnownFront([points[0][0], points[^1][1]], [points[^1][0], points[0][1]], 1, points);
        return unit with { Area = unit.Share(points) };
    }

    /// <summary>Scales objectives so that the front's corners are 0 and 1.</summary>
    public double[] Scale(double[] objectives) =>
        [(objectives[0] - Ideal[0]) / (Nadir[0] - Ideal[0]), (objectives[1] - Ideal[1]) / (Nadir[1] - Ideal[1])];

    /// <summary>Dominated area as a share of the exact front's.</summary>
    public double Share(IEnumerable<double[]> objectives) => Hypervolume.Of(objectives.Select(Scale), [1.1, 1.1]) / Area;

    /// <summary>How many of the finite front's points are among these.</summary>
    public int Found(IReadOnlyCollection<double[]> objectives) =>
        Points.Count(p => objectives.Any(o => Math.Abs(o[0] - p[0]) <= 1e-9 * Math.Max(1e-3, Math.Abs(p[0])) && Math.Abs(o[1] - p[1]) <= 1e-9 * Math.Abs(p[1])));

    private static double[][] Read(string text) =>
        [.. text.Split(',').Select(pair => pair.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(word => double.Parse(word, System.Globalization.CultureInfo.InvariantCulture)).ToArray())];
}
