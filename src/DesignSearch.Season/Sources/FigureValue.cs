namespace DesignSearch.Season.Sources;

/// <summary>A figure of a season with its value.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Value">Its value, NaN where it makes no sense.</param>
public readonly record struct FigureValue(Figure Figure, double Value);
