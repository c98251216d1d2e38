namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>
/// A plant as components and joints: what pictures and papers are drawn from. Every line of the bill is in it, and nothing else
/// that must be bought.
/// </summary>
/// <param name="Components">Parts, and things that are there.</param>
/// <param name="Joints">What joins them.</param>
public sealed record Scheme(IReadOnlyList<Component> Components, IReadOnlyList<Joint> Joints)
{
    /// <summary>A plant of nothing.</summary>
    public static Scheme Empty { get; } = new([], []);
}
