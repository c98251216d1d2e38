using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Formats;

/// <summary>One column of a format.</summary>
/// <param name="Field">What it holds.</param>
/// <param name="Names">Names it may carry; compared without case, the unit in brackets cut off.</param>
/// <param name="Unit">Unit where the name carries none.</param>
/// <param name="Needed">Without it the file cannot be used.</param>
internal sealed record FieldMap(WeatherField Field, IReadOnlyList<string> Names, string Unit, bool Needed = false)
{
    /// <summary>Where a cell holds several values parted by commas: which of them, from 1; 0 takes the whole cell.</summary>
    public int Part { get; init; }

    /// <summary>Factor of a column of whole numbers, for instance 0.1 for tenths; a column with decimal points is taken as it is.</summary>
    public double Times { get; init; } = 1;

    /// <summary>Values that mean "missing" in this column, beside those of the whole format.</summary>
    public IReadOnlyList<double> Missing { get; init; } = [];

    /// <summary>Column of the flags; empty: they stand in the cell itself.</summary>
    public string FlagColumn { get; init; } = "";

    /// <summary>Which part is the flag, from 1; 0: there is none, or the whole of <see cref="FlagColumn"/>.</summary>
    public int FlagPart { get; init; }

    /// <summary>Flags of values that must not be used.</summary>
    public IReadOnlyList<string> BadFlags { get; init; } = [];

    /// <summary>Codes and what each stands for, in the unit of the column; a code that is not listed is a value.</summary>
    public IReadOnlyDictionary<double, double> Codes { get; init; } = new Dictionary<double, double>();

    /// <summary>The text of the value in a cell; empty where its flag forbids it.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="flags">The cell of the flags, or the same cell.</param>
    public string Of(string cell, string flags)
    {
        if (BadFlags.Count > 0 && BadFlags.Contains(PartOf(flags, FlagPart)))
            return "";
        return PartOf(cell, Part);
    }

    private static string PartOf(string text, int part)
    {
        if (part == 0)
            return text;
        var from = 0;
        for (var p = 1; p < part; p++)
        {
            from = text.IndexOf(',', from) + 1;
            if (from == 0)
                return "";
        }

        var end = text.IndexOf(',', from);
        return text[from..(end < 0 ? text.Length : end)].Trim();
    }
}
