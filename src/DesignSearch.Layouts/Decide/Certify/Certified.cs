using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Certify;

/// <summary>A certificate, and what came to light on the way.</summary>
/// <param name="Certificate">The certificate.</param>
/// <param name="Better">A layout that holds and is cheaper than what was known; null for none.</param>
/// <param name="Met">Layouts that hold, and are the cheapest of their ways.</param>
public sealed record Certified(Certificate Certificate, Layout? Better, IReadOnlyList<Layout> Met);
