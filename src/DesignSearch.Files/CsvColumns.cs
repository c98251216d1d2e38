namespace DesignSearch.Files;

/// <summary>Learns the columns of a file from the code that reads its rows: every question becomes a column, every answer is a blank.</summary>
public sealed class CsvColumns : ICsvCells
{
    private readonly List<CsvColumn> columns = [];

    private CsvColumns()
    {
    }

    /// <summary>The columns that a reader of rows asks for, in its order.</summary>
    /// <typeparam name="T">What a row becomes.</typeparam>
    /// <param name="readRow">Reads one row; it must ask for every column whatever the answers are.</param>
    public static IReadOnlyList<CsvColumn> Of<T>(Func<ICsvCells, T> readRow)
    {
        var survey = new CsvColumns();
        readRow(survey);
        return survey.columns;
    }

    /// <inheritdoc/>
    public string Slug(string column, string what) => Ask(column, CsvExpected.Slug, what, "");

    /// <inheritdoc/>
    public string Text(string column, string what) => Ask(column, CsvExpected.Text, what, "");

    /// <inheritdoc/>
    public string? TextIfAny(string column, string what) => Ask<string?>(column, CsvExpected.Text, what, null, isOptional: true);

    /// <inheritdoc/>
    public double Number(string column, double low, double high, string what) => Ask(column, CsvExpected.Number(low, high), what, 0.0);

    /// <inheritdoc/>
    public double? NumberIfAny(string column, double low, double high, string what) =>
        Ask<double?>(column, CsvExpected.Number(low, high), what, null, isOptional: true);

    /// <inheritdoc/>
    public int Whole(string column, int low, int high, string what) => Ask(column, CsvExpected.Whole(low, high), what, 0);

    /// <inheritdoc/>
    public decimal Money(string column, string what) => Ask(column, CsvExpected.Money, what, 0m);

    /// <inheritdoc/>
    public decimal? MoneyIfAny(string column, string what) => Ask<decimal?>(column, CsvExpected.Money, what, null, isOptional: true);

    /// <inheritdoc/>
    public bool YesNo(string column, string what) => Ask(column, CsvExpected.YesNo, what, false);

    /// <inheritdoc/>
    public T Word<T>(string column, IReadOnlyList<(string Word, T Meaning)> words, string what) =>
        Ask(column, CsvExpected.Words(words.Select(w => w.Word)), what, words[0].Meaning);

    private T Ask<T>(string name, string expected, string what, T blank, bool isOptional = false)
    {
        columns.Add(new(name, expected, what, isOptional));
        return blank;
    }
}
