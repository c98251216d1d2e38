namespace DesignSearch.Layouts.Design.Brief;

/// <summary>A figure that a log was asked for.</summary>
/// <param name="Value">The figure; 1 where the log could not tell it.</param>
/// <param name="Low">The least it may be, 19 of 20 times within.</param>
/// <param name="High">The most it may be, likewise.</param>
/// <param name="IsLearnt">True where the log told it; false where it is the drawing's, with the range that the drawing leaves.</param>
public sealed record FittedFigure(double Value, double Low, double High, bool IsLearnt);
