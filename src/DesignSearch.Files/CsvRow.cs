using System.Globalization;

namespace DesignSearch.Files;

/// <summary>One row of a file: answers questions for its cells and writes down what is wrong with them.</summary>
internal sealed class CsvRow(
    string file,
    int line,
    IReadOnlyDictionary<string, string> cells,
    IReadOnlyDictionary<string, TextPlace> places,
    bool hasCommas,
    FaultList faults) : ICsvCells
{
    public string Slug(string column, string what) =>
        TryFind(column, out var text) && IsSlug(text) ? text : Refuse(column, CsvExpected.Slug, "");

    public string Text(string column, string what) =>
        TryFind(column, out var text) && text.Length is > 0 and <= 400 ? text : Refuse(column, CsvExpected.Text, "");

    public string? TextIfAny(string column, string what) =>
        !cells.TryGetValue(column, out var text) || text.Length == 0 ? null
        : text.Length <= 400 ? text
        : Refuse<string?>(column, CsvExpected.Text + ", or nothing", null);

    public double Number(string column, double low, double high, string what) =>
        TryFind(column, out var text) && CsvNumber.TryRead(text, hasCommas, out var value) && value >= low && value <= high
            ? value
            : Refuse(column, CsvExpected.Number(low, high) + NumberHint.Of(cells.GetValueOrDefault(column, "")), 0.0);

    public double? NumberIfAny(string column, double low, double high, string what) =>
        !cells.TryGetValue(column, out var text) || text.Length == 0 ? null
        : CsvNumber.TryRead(text, hasCommas, out var value) && value >= low && value <= high ? value
        : Refuse<double?>(column, CsvExpected.Number(low, high) + ", or nothing" + NumberHint.Of(text), null);

    public int Whole(string column, int low, int high, string what) =>
        TryFind(column, out var text) && int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) && value >= low && value <= high
            ? value
            : Refuse(column, CsvExpected.Whole(low, high), 0);

    public decimal Money(string column, string what) =>
        TryFind(column, out var text) && CsvNumber.TryReadMoney(text, hasCommas, out var value)
            ? value
            : Refuse(column, CsvExpected.Money + NumberHint.Of(cells.GetValueOrDefault(column, "")), 0m);

    public decimal? MoneyIfAny(string column, string what) =>
        !cells.TryGetValue(column, out var text) || text.Length == 0 ? null
        : CsvNumber.TryReadMoney(text, hasCommas, out var value) ? value
        : Refuse<decimal?>(column, CsvExpected.Money + ", or nothing" + NumberHint.Of(text), null);

    public bool YesNo(string column, string what) => Word(column, [("yes", true), ("no", false)], what);

    public T Word<T>(string column, IReadOnlyList<(string Word, T Meaning)> words, string what)
    {
        if (TryFind(column, out var text))
        {
            foreach (var (word, meaning) in words)
            {
                if (word == text)
                    return meaning;
            }
        }

        var known = words.Select(w => w.Word).ToList();
        return Refuse(column, CsvExpected.Words(known) + NearWord.Hint(text, known), words[0].Meaning);
    }

    private static bool IsSlug(string text) =>
        text.Length is > 0 and <= 60 && char.IsAsciiLetterLower(text[0]) && text[^1] != '-' && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');

    private bool TryFind(string column, out string text)
    {
        text = cells.GetValueOrDefault(column, "");
        return cells.ContainsKey(column);
    }

    // A column that the header lacks has been reported there, once for all rows.
    private T Refuse<T>(string column, string expected, T blank)
    {
        if (cells.TryGetValue(column, out var text))
        {
            var place = places.TryGetValue(column, out var found) ? found : new(line, 0);
            faults.Add(file, place.Line, place.Column, text, $"{column}: {expected}");
        }

        return blank;
    }
}
