namespace DesignSearch.Search.Engine;

/// <summary>Points that go into evaluation together, and how each was chosen and made.</summary>
/// <param name="Points">The points.</param>
/// <param name="Origins">Where each came from; empty where nobody is to learn from it.</param>
internal sealed record ProposedBlock(double[][] Points, IReadOnlyList<Origin> Origins);
