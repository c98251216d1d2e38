namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Several ways compared at equal protection: the cheapest found of each that holds, or the nearest where none holds.</summary>
/// <param name="Question">What is compared, in a few words.</param>
/// <param name="Ways">The ways.</param>
/// <param name="Answer">What follows, in one sentence.</param>
public sealed record Comparison(string Question, IReadOnlyList<Way> Ways, string Answer);
