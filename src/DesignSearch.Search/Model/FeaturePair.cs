namespace DesignSearch.Search.Model;

/// <summary>Two variables, the later first, and where their weights lie.</summary>
/// <param name="First">The later.</param>
/// <param name="Second">The earlier.</param>
/// <param name="Start">First weight.</param>
/// <param name="Cells">Weights in all.</param>
/// <param name="IsMixed">One has a fine curve, the other levels.</param>
internal sealed record FeaturePair(int First, int Second, int Start, int Cells, bool IsMixed)
{
    /// <summary>How much it counts.</summary>
    public double Scale { get; set; }

    /// <summary>The one that is not the given one.</summary>
    public int Other(int variable) => variable == First ? Second : First;
}
