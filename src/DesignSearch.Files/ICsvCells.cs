namespace DesignSearch.Files;

/// <summary>
/// Asks for the cells of one row by the name of their column. A reader of a row calls every method for every row, so that the same code,
/// run once without a row, tells which columns a file may have (<see cref="CsvColumns"/>).
/// </summary>
public interface ICsvCells
{
    /// <summary>A short name made of small letters, digits and hyphens, beginning with a letter.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="what">What the column means, for the page that describes the file.</param>
    string Slug(string column, string what);

    /// <summary>Text that may not be empty.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="what">What the column means.</param>
    string Text(string column, string what);

    /// <summary>Text, or nothing where the cell or the whole column is missing.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="what">What the column means.</param>
    string? TextIfAny(string column, string what);

    /// <summary>A plain number from low to high.</summary>
    /// <param name="column">Name of the column, its unit at the end.</param>
    /// <param name="low">Smallest number that makes sense.</param>
    /// <param name="high">Largest number that makes sense.</param>
    /// <param name="what">What the column means.</param>
    double Number(string column, double low, double high, string what);

    /// <summary>A plain number from low to high, or nothing where the cell or the whole column is missing.</summary>
    /// <inheritdoc cref="Number"/>
    double? NumberIfAny(string column, double low, double high, string what);

    /// <summary>A whole number from low to high.</summary>
    /// <inheritdoc cref="Number"/>
    int Whole(string column, int low, int high, string what);

    /// <summary>Money, 0 or more, with at most two decimals.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="what">What the column means.</param>
    decimal Money(string column, string what);

    /// <summary>Money, or nothing where the cell or the whole column is missing.</summary>
    /// <inheritdoc cref="Money"/>
    decimal? MoneyIfAny(string column, string what);

    /// <summary>A word, yes or no.</summary>
    /// <param name="column">Name of the column.</param>
    /// <param name="what">What the column means.</param>
    bool YesNo(string column, string what);

    /// <summary>One word of a list.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="column">Name of the column.</param>
    /// <param name="words">Every word that may stand there, and its meaning.</param>
    /// <param name="what">What the column means.</param>
    T Word<T>(string column, IReadOnlyList<(string Word, T Meaning)> words, string what);
}
