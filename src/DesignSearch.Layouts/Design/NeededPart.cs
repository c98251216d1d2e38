using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design;

/// <summary>A part and how much of it a layout needs.</summary>
/// <param name="Part">The part.</param>
/// <param name="Quantity">How much, in the part's unit, allowance for cuts included.</param>
/// <param name="Purpose">What for and where.</param>
public sealed record NeededPart(IPart Part, decimal Quantity, Purpose Purpose)
{
    /// <summary>Allowance for cuts and overlaps of what is cut to size (common practice, no source).</summary>
    public const double Cuts = 1.05;
}
