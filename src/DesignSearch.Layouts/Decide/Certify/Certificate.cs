using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;

namespace DesignSearch.Layouts.Decide.Certify;

/// <summary>What is proved of the first answer: that no cheaper layout holds, or below which cost none does.</summary>
/// <param name="Sentence">It in a plain sentence or two.</param>
/// <param name="IsProved">True when no layout that holds costs less than the answer; where nothing was found, when none holds at all.</param>
/// <param name="NoneBelow">No layout that holds costs less than this over the years; null where nothing holds at all.</param>
/// <param name="Found">What the cheapest found costs; null where none was found.</param>
/// <param name="Gap">Part of the answer's cost that a better one could save, 0 … 1; null where none was found.</param>
/// <param name="Simulations">Sets of layouts, and single layouts, simulated for it.</param>
/// <param name="Boxes">Sets of layouts looked at.</param>
/// <param name="IsStopped">True when it was stopped by hand or signal.</param>
public sealed record Certificate(
    string Sentence,
    bool IsProved,
    decimal? NoneBelow,
    decimal? Found,
    double? Gap,
    long Simulations,
    long Boxes,
    bool IsStopped)
{
    /// <summary>What is proved of the ways that are compared; empty where they were gone through whole.</summary>
    public IReadOnlyList<WayBound> Ways { get; init; } = [];

    /// <summary>The same where the first choice is not the cheapest that holds but a surer one: what is proved is of the cheapest.</summary>
    /// <param name="cheapest">The cheapest that holds.</param>
    /// <param name="first">The first choice.</param>
    /// <param name="currency">The currency's word.</param>
    /// <param name="isExact">True when every layout was gone through.</param>
    public Certificate Beside(JudgedLayout cheapest, JudgedLayout first, string currency, bool isExact)
    {
        ArgumentNullException.ThrowIfNull(cheapest);
        ArgumentNullException.ThrowIfNull(first);
        return first.LifeCost == cheapest.LifeCost ? this : this with { Sentence = string.Join(' ', Sentence, CertificateWords.OfTheCheapest(cheapest, first, currency, isExact)) };
    }
}
