using DesignSearch.Physics;

namespace DesignSearch.Season.Covers;

/// <summary>
/// A cover by its layers, made into what the kernel knows of one: an inner surface, an outer surface, a resistance between them and the radiation that
/// passes. Layers between the two have no capacity and are eliminated at <see cref="MeanK"/>; the films stay with whoever simulates.
/// </summary>
public sealed class CoverMakeUp
{
    /// <summary>Mean of the temperatures for which gaps and radiation are made linear [K], EN 673.</summary>
    public const double MeanK = 283;

    // Floor and contents (from memory), and the sheet that the radiant film of EN 673 is made for.
    private const double FloorEmissivity = 0.9;
    private const double LeastResistance = 1e-4;
    private const double RadiantWPerM2K = 4 * Radiation.StefanBoltzmannWPerM2K4 * MeanK * MeanK * MeanK;

    private CoverMakeUp(double resistance, CoverRadiation radiation) => (ResistanceM2KPerW, LongWave) = (resistance, radiation);

    /// <summary>Inner to outer surface, gaps included, films not [m²K/W].</summary>
    public double ResistanceM2KPerW { get; }

    /// <summary>What passes as radiation.</summary>
    public CoverRadiation LongWave { get; }

    /// <summary>The make-up of some layers.</summary>
    /// <param name="layers">From the inside to the outside, at least one.</param>
    /// <param name="gapM">Air between two of them [m], above 0.</param>
    /// <param name="tiltDeg">0 flat, 90 upright [°].</param>
    public static CoverMakeUp Of(IReadOnlyList<CoverLayer> layers, double gapM, double tiltDeg)
    {
        ArgumentNullException.ThrowIfNull(layers);
        if (layers.Count == 0)
            throw new ArgumentException("A cover has a layer at least.", nameof(layers));
        var convection = layers.Count > 1 ? AirGap.ConvectionWPerM2K(gapM, tiltDeg, AirGap.StandardDifferenceK / (layers.Count - 1)) : 0;
        var net = Network(layers, convection);
        var opaque = Exchange([CoverLayer.Glass])[0, 1];
        // Nodes kept: floor, innermost face, outermost face, outside.
        return new(
            1 / net[1, 2],
            new(net[0, 1] / RadiantWPerM2K / opaque, net[0, 2], net[0, 3] / RadiantWPerM2K, net[1, 3] / RadiantWPerM2K, net[2, 3] / RadiantWPerM2K));
    }

    // Conductances between floor, every face of every layer and the outside, then all but four of them eliminated.
    private static double[,] Network(IReadOnlyList<CoverLayer> layers, double convection)
    {
        var n = layers.Count;
        var g = new double[2 * n + 2, 2 * n + 2];
        void Join(int a, int b, double conductance) => (g[a, b], g[b, a]) = (g[a, b] + conductance, g[b, a] + conductance);
        var exchange = Exchange(layers);
        // A layer radiates inwards from its inner face and outwards from its outer one.
        for (var a = 0; a <= n; a++)
        {
            for (var b = a + 1; b <= n + 1; b++)
                Join(2 * a, b == n + 1 ? 2 * n + 1 : 2 * b - 1, RadiantWPerM2K * exchange[a, b]);
        }

        for (var layer = 1; layer <= n; layer++)
        {
            Join(2 * layer - 1, 2 * layer, 1 / Math.Max(LeastResistance, layers[layer - 1].ResistanceM2KPerW));
            if (layer < n)
                Join(2 * layer, 2 * layer + 1, convection);
        }

        int[] kept = [0, 1, 2 * n, 2 * n + 1];
        foreach (var gone in Enumerable.Range(2, 2 * n - 2).Where(k => k < 2 * n))
            Eliminate(g, gone);
        var left = new double[4, 4];
        for (var a = 0; a < 4; a++)
        {
            for (var b = 0; b < 4; b++)
                left[a, b] = g[kept[a], kept[b]];
        }

        return left;
    }

    // Star to mesh: what met in the node joins its neighbours.
    private static void Eliminate(double[,] g, int node)
    {
        var count = g.GetLength(0);
        var sum = Enumerable.Range(0, count).Sum(k => g[node, k]);
        var ways = Enumerable.Range(0, count).Select(k => g[node, k]).ToArray();
        for (var a = 0; a < count; a++)
        {
            for (var b = 0; b < count; b++)
            {
                if (a != b && a != node && b != node)
                    g[a, b] += ways[a] * ways[b] / sum;
            }
        }

        for (var k = 0; k < count; k++)
            g[node, k] = g[k, node] = 0;
    }

    // Share of what a black body would give from each to each of floor, layers and a black outside, all ways of reflection counted: parallel plates without end.
    private static double[,] Exchange(IReadOnlyList<CoverLayer> layers)
    {
        var n = layers.Count;
        double Emits(int node) => node == 0 ? FloorEmissivity : node > n ? 1 : layers[node - 1].Emissivity;
        var share = new double[n + 2, n + 2];
        for (var from = 0; from <= n + 1; from++)
        {
            // Gap k lies above node k: what rises in it, and what falls.
            var (up, down) = (new double[n + 1], new double[n + 1]);
            for (var round = 0; round < 500; round++)
            {
                up[0] = (from == 0 ? FloorEmissivity : 0) + (1 - FloorEmissivity) * down[0];
                down[n] = from == n + 1 ? 1 : 0;
                for (var k = 1; k <= n; k++)
                {
                    var (layer, own) = (layers[k - 1], from == k ? layers[k - 1].Emissivity : 0);
                    var thrown = 1 - layer.LongWave - layer.Emissivity;
                    up[k] = own + layer.LongWave * up[k - 1] + thrown * down[k];
                    down[k - 1] = own + layer.LongWave * down[k] + thrown * up[k - 1];
                }
            }

            for (var to = 0; to <= n + 1; to++)
                share[from, to] = Emits(to) * ((to > 0 ? up[to - 1] : 0) + (to <= n ? down[to] : 0));
        }

        return share;
    }
}
