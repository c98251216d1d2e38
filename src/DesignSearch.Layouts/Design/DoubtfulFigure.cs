using MathNet.Numerics.Distributions;

namespace DesignSearch.Layouts.Design;

/// <summary>One figure that nobody knows for sure, with the range it may lie in.</summary>
/// <param name="Name">What it is, in a few plain words; of all that are in doubt about a layout none shares it.</param>
/// <param name="Usual">The figure that everything is worked out with.</param>
/// <param name="Low">The least it may be, not above the usual one.</param>
/// <param name="High">The most it may be, not under the usual one.</param>
/// <param name="Why">Where the range comes from, a sentence.</param>
/// <param name="What">What is otherwise, in plain words, for a figure.</param>
public sealed record DoubtfulFigure(string Name, double Usual, double Low, double High, string Why, Func<double, string> What)
{
    /// <summary>The ends of the range that are not the usual figure.</summary>
    public IEnumerable<double> Ends => new[] { High, Low }.Where(end => end != Usual);

    /// <summary>The range in words: its ends as one would meet them.</summary>
    public string Range => string.Join("; ", Ends.Select(What));

    /// <summary>The figure at a share of all it may be: a triangle over the range, its tip at the usual figure.</summary>
    /// <param name="share">0 to 1.</param>
    public double At(double share) => Triangular.InvCDF(Low, High, Usual, share);
}
