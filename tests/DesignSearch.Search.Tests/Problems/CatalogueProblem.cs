using DesignSearch.Search.Space;

namespace DesignSearch.Search.Tests;

/// <summary>An invented catalogue of twelve choices whose second objective is a small simulation; seed 20240001 is the reference problem.</summary>
public sealed class CatalogueProblem : IBoundedProblem
{
    private static readonly int[] LevelCounts = [8, 12, 9, 7, 3, 6, 4, 5, 3, 4, 4, 3];
    private static readonly HashSet<int> Categories = [0, 3, 6, 7, 8, 9, 11];

    private readonly record struct Source(double Gain, double Peak, double Dark, double Foot, double Cost);
    private readonly record struct Store(double Cap, double Leak, double Foot, double Cost);

    private readonly Source[] sources = new Source[8];
    private readonly Store[] stores = new Store[7];
    private readonly double[] matK = new double[4], matCost = new double[4];
    private readonly double[] movFlow = new double[5], movPower = new double[5], movCost = new double[5];
    private readonly double[] ctlCost = new double[3];
    private readonly double[] bakPower = new double[4], bakCost = new double[4];
    private readonly double[] covLoss = new double[4], covPass = new double[4], covCost = new double[4];
    private readonly double[] folWide = new double[3], folCost = new double[3], folPower = new double[3];
    private readonly double[] sun = new double[120], need = new double[120];
    private readonly bool screened;
    private long started;

    public CatalogueProblem(ulong seed = 20240001, bool screened = true)
    {
        this.screened = screened;
        var state = seed;
        double Draw(int low, int high)
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            z ^= z >> 31;
            return low + (long)(z % (ulong)(high - low + 1));
        }

        for (var i = 0; i < 8; i++)
        {
            double gain = Draw(60, 160), peak = Draw(1, 7), dark = Draw(5, 45), foot = Draw(10, 26);
            sources[i] = new(gain, peak, dark, foot, 20 + (gain * Draw(70, 130) / 100) + dark);
        }

        for (var i = 0; i < 7; i++)
        {
            double cap = Draw(400, 3200), leak = Draw(8, 30), foot = Draw(5, 40);
            stores[i] = new(cap, leak, foot, 60 + (cap * Draw(12, 30) / 100) + ((30 - leak) * 6));
        }

        for (var i = 0; i < 4; i++)
        {
            matK[i] = Draw(15, 60);
            matCost[i] = 4 + ((60 - matK[i]) * Draw(20, 60) / 100);
        }

        for (var i = 0; i < 5; i++)
        {
            movFlow[i] = Draw(80, 700);
            movPower[i] = Draw(10, 60) + (movFlow[i] / 20);
            movCost[i] = 25 + (movFlow[i] * Draw(10, 35) / 100);
        }

        for (var i = 0; i < 3; i++)
            ctlCost[i] = i * Draw(15, 45);
        for (var i = 1; i < 4; i++)
        {
            bakPower[i] = Draw(5, 25) + (12 * i);
            bakCost[i] = 90 + (bakPower[i] * Draw(7, 12));
        }

        for (var i = 0; i < 4; i++)
        {
            covLoss[i] = i == 0 ? 100 : 100 - (14 * i) - Draw(0, 8);
            covPass[i] = 100 - (4 * i) - Draw(0, 3);
            covCost[i] = i * Draw(40, 110);
        }

        for (var i = 0; i < 3; i++)
        {
            folWide[i] = 10 + (9 * i) + Draw(0, 5);
            folCost[i] = i * Draw(35, 90);
            folPower[i] = i * Draw(5, 20);
        }

        double clear = 0;
        for (var t = 0; t < 120; t++)
        {
            int h = t % 24, day = t / 24;
            if (h == 0)
                clear = Draw(15, 100);
            double tri = h is < 6 or > 18 ? 0 : h <= 12 ? h - 6 : 18 - h;
            sun[t] = tri * clear / 600;
            need[t] = 2 * Math.Max(0, 10 + (13 * Math.Abs(12 - h)) + Draw(0, 60) + (18 * (day % 3)) - 40);
        }

        Variables = [.. LevelCounts.Select((levels, i) => new Variable
        {
            Name = FormattableString.Invariant($"x{i}"),
            Kind = Categories.Contains(i) ? VariableKind.Category : VariableKind.Ordered,
            Levels = levels,
            AwakeWhen = i == 6 ? point => point[5] != 0 : null,
        })];
    }

    public IReadOnlyList<Variable> Variables { get; }

    public IReadOnlyList<string> Objectives { get; } = ["cost", "unmet"];

    public IReadOnlyList<string> Constraints { get; } = ["limits"];

    public long Started => started;

    public double SunSum => sun.Sum();

    public double NeedSum => need.Sum();

    public IEnumerable<double> Gains => sources.Select(s => s.Gain);

    public IEnumerable<double> Losses => covLoss;

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        if (!screened)
            return;
        objectiveBounds[0] = Cost(point);
        objectiveBounds[1] = 0;
        violations[0] = Violation(point, objectiveBounds[0]);
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        Interlocked.Add(ref started, points.Length);
        for (var i = 0; i < points.Length; i++)
        {
            var cost = Cost(points[i]);
            evaluations[i] = new([cost, Unmet(points[i])], [Violation(points[i], cost)]);
        }
    }

    public double Cost(ReadOnlySpan<double> x)
    {
        double n = x[1] + 1, s = x[4] + 1;
        var store = stores[(int)x[3]];
        return (n * sources[(int)x[0]].Cost * (n >= 6 ? 0.95 : 1)) + (s * store.Cost) + (x[5] * matCost[(int)x[6]] * s * (1 + (store.Cap / 1600)))
            + movCost[(int)x[7]] + ctlCost[(int)x[8]] + bakCost[(int)x[9]] + covCost[(int)x[10]] + (folCost[(int)x[11]] * (1 + (n / 4)));
    }

    public double Violation(ReadOnlySpan<double> x, double cost)
    {
        double n = x[1] + 1, s = x[4] + 1;
        return Math.Max(0, (cost / 3000) - 1)
            + Math.Max(0, (((n * sources[(int)x[0]].Foot) + (s * stores[(int)x[3]].Foot)) / 240) - 1)
            + Math.Max(0, ((movPower[(int)x[7]] + (folPower[(int)x[11]] * n / 3) + (bakPower[(int)x[9]] / 2)) / 110) - 1);
    }

    public double Unmet(ReadOnlySpan<double> x) => Unmet(CoefficientsOf(x), 1e-9);

    /// <inheritdoc/>
    public IReadOnlyList<bool> ActsOneWay { get; } = [.. Enumerable.Range(0, 12).Select(i => i is not (2 or 7 or 8))];

    /// <inheritdoc/>
    public bool BoundCheaply(LevelBox box, Span<double> objectiveBounds)
    {
        double n = box.Low[1] + 1, s = box.Low[4] + 1;
        var source = Range(box, 1).Min(x => Best(box, 0, i => -(x + 1) * sources[i].Cost * (x + 1 >= 6 ? 0.95 : 1)) * -1);
        var cap = -Best(box, 3, i => -stores[i].Cap);
        var fol = -Best(box, 11, i => -folCost[i]);
        var cost = source + (s * -Best(box, 3, i => -stores[i].Cost)) + (box.Low[5] * -Best(box, 6, i => -matCost[i]) * s * (1 + (cap / 1600)))
            - Best(box, 7, i => -movCost[i]) - Best(box, 8, i => -ctlCost[i]) - Best(box, 9, i => -bakCost[i]) - Best(box, 10, i => -covCost[i]) + (fol * (1 + (n / 4)));
        objectiveBounds[0] = cost - 1e-9;
        objectiveBounds[1] = 0;
        var foot = (n * -Best(box, 0, i => -sources[i].Foot)) + (s * -Best(box, 3, i => -stores[i].Foot));
        var power = -Best(box, 7, i => -movPower[i]) + (-Best(box, 11, i => -folPower[i]) * n / 3) + (-Best(box, 9, i => -bakPower[i]) / 2);
        return cost <= 3000.000001 && foot <= 240.000001 && power <= 110.000001;
    }

    /// <inheritdoc/>
    public void BoundBySimulation(LevelBox box, Span<double> objectiveBounds)
    {
        BoundCheaply(box, objectiveBounds);
        double s = box.High[4] + 1, cap = Best(box, 3, i => stores[i].Cap), angle = box.Low[2];
        var flow = Best(box, 7, i => movFlow[i]);
        var fit = Best(box, 0, i => Best(box, 11, w => Fit(angle - sources[i].Peak, folWide[w])));
        var leak = -Best(box, 3, i => -stores[i].Leak) / 1000 / (1 + (box.High[5] * (70 + Best(box, 6, i => -matK[i])) / 40));
        var best = new Coefficients(box.High[1] + 1, Best(box, 0, i => sources[i].Gain), Best(box, 0, i => sources[i].Dark), fit, Best(box, 10, i => covPass[i]),
            flow * (1 + (0.25 * box.High[4])), flow, cap * s, -Best(box, 3, i => -stores[i].Cap) * (box.Low[4] + 1), leak,
            -Best(box, 10, i => -covLoss[i]), Best(box, 9, i => bakPower[i]), box.Low[8]);
        objectiveBounds[1] = Unmet(best, 1e-6);
    }

    private static IEnumerable<int> Range(LevelBox box, int variable) => Enumerable.Range(box.Low[variable], box.High[variable] - box.Low[variable] + 1);

    private static double Best(LevelBox box, int variable, Func<int, double> figure)
    {
        var best = double.NegativeInfinity;
        for (var level = box.Low[variable]; level <= box.High[variable]; level++)
            best = Math.Max(best, figure(level));
        return best;
    }

    private static double Fit(double off, double wide) => Math.Max(0, 1 - (off * off / (2 * wide)));

    // What the simulation needs; the small capacity counts where less is better, the large one where more is.
    private readonly record struct Coefficients(double Number, double Gain, double Dark, double Fit, double Pass, double Inflow, double Flow,
        double Capacity, double SmallCapacity, double Leak, double Loss, double Back, int Control);

    private Coefficients CoefficientsOf(ReadOnlySpan<double> x)
    {
        var source = sources[(int)x[0]];
        var store = stores[(int)x[3]];
        var capacity = store.Cap * (x[4] + 1);
        return new(x[1] + 1, source.Gain, source.Dark, Fit(x[2] - source.Peak, folWide[(int)x[11]]), covPass[(int)x[10]], movFlow[(int)x[7]] * (1 + (0.25 * x[4])),
            movFlow[(int)x[7]], capacity, capacity, store.Leak / 1000 / (1 + (x[5] * (70 - matK[(int)x[6]]) / 40)), covLoss[(int)x[10]], bakPower[(int)x[9]], (int)x[8]);
    }

    private double Unmet(in Coefficients c, double slack)
    {
        var q = c.Capacity / 2;
        var unmet = 0;
        for (var t = 0; t < 120; t++)
        {
            var g = c.Number * c.Gain * c.Pass / 100 * ((sun[t] * c.Fit) + (sun[t] > 0 ? 0.06 * c.Dark / 100 : 0));
            g = Math.Min(g, c.Inflow);
            double drag;
            if (c.Control == 0)
                drag = 6;
            else if (c.Control == 1)
                (g, drag) = sun[t] < 0.15 ? (0, 0) : (g, 3);
            else
                (g, drag) = g < 0.02 * c.SmallCapacity ? (g / 2, 0) : (g, 2);
            q = Math.Clamp(q + g - drag, 0, c.Capacity);
            q -= q * c.Leak;
            var want = need[t] * c.Loss / 100;
            var send = Math.Min(Math.Min(0.35 * q, 0.8 * c.Flow), want);
            q -= send;
            if (send + c.Back < want - slack)
                unmet++;
        }

        return unmet;
    }
}
