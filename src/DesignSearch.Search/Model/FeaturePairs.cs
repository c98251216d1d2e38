namespace DesignSearch.Search.Model;

/// <summary>The pairs of a model's variables: how much each counts, and which are used.</summary>
internal sealed class FeaturePairs
{
    // What is left to a pair that seemed not to matter, as a share of what each has at first, and how much it must have to be used.
    private const double Floor = 0.02;
    private const double Least = 0.1;

    // From here on a real moves with a kind.
    private const double Together = 0.5;

    private readonly int variables;
    private readonly FeaturePair[] pairs;
    private readonly FeaturePair[][] partners;

    /// <summary>All of them are used at first.</summary>
    public FeaturePairs(int variables, IReadOnlyList<FeaturePair> pairs)
    {
        (this.variables, this.pairs, partners) = (variables, [.. pairs], new FeaturePair[variables][]);
        UseAll();
    }

    /// <summary>Whether there are any.</summary>
    public bool Any => pairs.Length > 0;

    /// <summary>Those that are used.</summary>
    public FeaturePair[] Used { get; private set; } = [];

    /// <summary>Those of a variable that are used.</summary>
    public FeaturePair[] Of(int variable) => partners[variable];

    /// <summary>Whether the two of a pair move together.</summary>
    public bool AreTogether(FeaturePair pair) => pair.Scale * pair.Scale >= Together * 2 / variables;

    /// <summary>
    /// Lets pairs that turned out to matter count for more and the others for less, all together for as much as before: each by the size of what
    /// the models hold of it. A model of twelve kinds has sixty-six pairs, of which mostly a dozen matter.
    /// </summary>
    /// <param name="models">The weights of each.</param>
    /// <param name="size">Weights of a model.</param>
    /// <returns>For each weight the factor by which it must grow to say the same as before.</returns>
    public double[] Reweigh(IReadOnlyList<double[]> models, int size)
    {
        var sizes = new double[pairs.Length];
        foreach (var weight in models)
        {
            var whole = 0.0;
            var own = new double[pairs.Length];
            for (var p = 0; p < pairs.Length; p++)
            {
                foreach (var part in weight.AsSpan(pairs[p].Start, pairs[p].Cells))
                    own[p] += part * part;
                own[p] *= pairs[p].Scale * pairs[p].Scale;
                whole += own[p];
            }

            for (var p = 0; p < pairs.Length && whole > 0; p++)
                sizes[p] += own[p] / whole / pairs[p].Cells;
        }

        var factors = new double[size];
        Array.Fill(factors, 1);
        double sum = sizes.Sum(), total = 2.0 / variables * pairs.Length;
        for (var p = 0; p < pairs.Length && sum > 0; p++)
        {
            var before = pairs[p].Scale;
            pairs[p].Scale = Math.Sqrt((Floor * 2.0 / variables) + ((1 - Floor) * total * sizes[p] / sum));
            factors.AsSpan(pairs[p].Start, pairs[p].Cells).Fill(before / pairs[p].Scale);
        }

        return factors;
    }

    /// <summary>Uses all pairs, those left out too.</summary>
    public void UseAll() => Use(pairs);

    /// <summary>Leaves out the pairs that hardly matter, until they are weighed again.</summary>
    public void Prune() => Use([.. pairs.Where(p => p.Scale * p.Scale >= Least * 2 / variables)]);

    private void Use(FeaturePair[] those)
    {
        Used = those;
        for (var i = 0; i < variables; i++)
            partners[i] = [.. those.Where(p => p.First == i || p.Second == i)];
    }
}
