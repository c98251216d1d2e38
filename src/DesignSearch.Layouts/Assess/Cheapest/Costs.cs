namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>Two sums of money that are bounded side by side.</summary>
/// <param name="Build">Build price.</param>
/// <param name="Life">Cost over the years without any electricity.</param>
internal readonly record struct Costs(double Build, double Life)
{
    public static Costs Endless { get; } = new(double.PositiveInfinity, double.PositiveInfinity);

    public static Costs operator +(Costs a, Costs b) => new(a.Build + b.Build, a.Life + b.Life);

    public static Costs operator -(Costs a, Costs b) => new(a.Build - b.Build, a.Life - b.Life);

    public static Costs operator *(double factor, Costs a) => new(factor * a.Build, factor * a.Life);

    /// <summary>The lesser of each.</summary>
    public static Costs Least(Costs a, Costs b) => new(Math.Min(a.Build, b.Build), Math.Min(a.Life, b.Life));
}
