using DesignSearch.Search.Engine;

namespace DesignSearch.Search.Moves;

/// <summary>Whom a proposed point was made from; empty for one drawn anywhere.</summary>
/// <param name="First">The parent it mostly comes from.</param>
/// <param name="Second">The other parent, where there are two.</param>
/// <param name="ShareOfSecond">How much of it is the second's, 0 … 1.</param>
internal readonly record struct Descent(EvaluatedPoint? First, EvaluatedPoint? Second = null, double ShareOfSecond = 0);
