namespace DesignSearch.Parts.Catalogues;

/// <summary>A rule between the cells of one row.</summary>
/// <param name="IsMet">True when the row keeps it.</param>
/// <param name="Column">Column that a fault points at.</param>
/// <param name="Expected">What was expected there, in plain words.</param>
public readonly record struct RowRule(bool IsMet, string Column, string Expected);
