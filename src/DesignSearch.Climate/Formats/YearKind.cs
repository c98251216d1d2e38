namespace DesignSearch.Climate.Formats;

/// <summary>What the years of the stamps mean.</summary>
internal enum YearKind
{
    /// <summary>Real years that follow each other.</summary>
    Real,

    /// <summary>Every month from a year of its own.</summary>
    Typical,

    /// <summary>Typical when the years do not follow each other, else real.</summary>
    AsTheyCome,
}
