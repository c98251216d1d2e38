namespace DesignSearch.Search.Engine;

/// <summary>How a point came to be proposed.</summary>
/// <param name="Choice">How it was chosen.</param>
/// <param name="Way">By which way of the proposer it was made; negative for none.</param>
internal readonly record struct Origin(Choice Choice, int Way);
