namespace DesignSearch.Layouts.Design.Papers;

/// <summary>One thing to try on the finished plant before it is left to itself.</summary>
/// <param name="Thing">What is tried, as the bill names it.</param>
/// <param name="Try">How.</param>
/// <param name="Wanted">What is to be seen or measured, with its figure.</param>
/// <param name="Unit">Unit of the value to write; empty where it is only seen.</param>
public sealed record CommissioningStep(string Thing, string Try, string Wanted, string Unit)
{
    /// <summary>Ids of the parts that are tried, one or more.</summary>
    public IReadOnlyList<string> PartIds { get; init; } = [];

    /// <summary>True where a licensed person measures it.</summary>
    public bool IsLicensed { get; init; }
}
