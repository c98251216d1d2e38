namespace DesignSearch.Climate.Winters;

/// <summary>A run of hours of a winter or a record.</summary>
/// <param name="First">First hour, counted from the start of the winter or record.</param>
/// <param name="Count">Number of hours.</param>
public readonly record struct HourSpan(int First, int Count);
