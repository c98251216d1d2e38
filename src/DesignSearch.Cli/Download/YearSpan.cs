namespace DesignSearch.Cli.Download;

/// <summary>Whole years from one to another.</summary>
/// <param name="First">The first of them.</param>
/// <param name="Last">The last of them, not before the first.</param>
public sealed record YearSpan(int First, int Last)
{
    /// <summary>Hours in all of them, leap days with them.</summary>
    internal int Hours => 24 * (int)(new DateTime(Last + 1, 1, 1) - new DateTime(First, 1, 1)).TotalDays;

    /// <inheritdoc/>
    public override string ToString() => First == Last ? FormattableString.Invariant($"{First}") : FormattableString.Invariant($"{First} to {Last}");
}
