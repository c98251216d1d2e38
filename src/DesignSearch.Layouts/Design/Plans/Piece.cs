namespace DesignSearch.Layouts.Design.Plans;

/// <summary>A straight piece of a frame, from the middle of one joint to that of the next.</summary>
/// <param name="Name">What it is.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
public sealed record Piece(string Name, Spot3 From, Spot3 To)
{
    /// <summary>Its length [m].</summary>
    public double LengthM => From.To(To);
}
