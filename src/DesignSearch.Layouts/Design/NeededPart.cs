using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design;

/// <summary>A part and how much of it a layout needs.</summary>
/// <param name="Part">The part.</param>
/// <param name="Quantity">How much, in the part's unit, allowance for cuts included.</param>
/// <param name="Purpose">What for and where.</param>
public sealed record NeededPart(IPart Part, decimal Quantity, Purpose Purpose)
{
    private readonly Duty[] duties = [];

    /// <summary>A part with what it meets.</summary>
    public NeededPart(IPart part, decimal quantity, Purpose purpose, ReadOnlySpan<Duty> duties)
        : this(part, quantity, purpose) => this.duties = duties.IsEmpty ? [] : duties.ToArray();

    /// <summary>What it meets in the states of the plant; empty where nothing of it is rated.</summary>
    public ReadOnlySpan<Duty> Duties => duties;

    /// <summary>True for what is hired each time it is used: who owns such a thing never hires it.</summary>
    public bool IsHired { get; init; }

    /// <summary>Its own cable to the box; none where it sits in the box or brings its cable.</summary>
    public Lead Lead { get; init; }

    /// <summary>Allowance for cuts and overlaps of what is cut to size (common practice, no source).</summary>
    public const double Cuts = 1.05;

    /// <inheritdoc/>
    public bool Equals(NeededPart? other) =>
        other is not null && (Part, Quantity, Purpose, IsHired) == (other.Part, other.Quantity, other.Purpose, other.IsHired)
        && Duties.SequenceEqual(other.Duties);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Part, Quantity, Purpose);
}
