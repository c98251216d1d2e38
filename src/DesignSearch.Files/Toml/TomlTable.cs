using System.Globalization;

namespace DesignSearch.Files.Toml;

/// <summary>
/// A table of a TOML file that is read by asking for keys. Every question marks its key; what nobody asked for is an unknown key
/// and is reported by <see cref="ReportUnknown"/> with the nearest name that was asked for. Faults go to the list given at reading;
/// a question whose answer is at fault returns the fallback, so that reading goes on and finds the rest.
/// </summary>
public sealed class TomlTable
{
    private readonly Dictionary<string, (TomlValue Value, int Line, int Column)> entries = new(StringComparer.Ordinal);
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);
    private readonly HashSet<string> unreadable = new(StringComparer.Ordinal);
    private readonly Dictionary<string, InputFault> missing = new(StringComparer.Ordinal);
    private readonly FaultList faults;

    internal TomlTable(string file, string name, int line, FaultList faults)
    {
        (File, Name, Line) = (file, name, line);
        this.faults = faults;
    }

    /// <summary>The file as the person named it.</summary>
    public string File { get; }

    /// <summary>Dotted name of the table; empty for the whole file.</summary>
    public string Name { get; }

    /// <summary>Line of its header, from 1.</summary>
    public int Line { get; }

    /// <summary>Its keys in the order of the file.</summary>
    public IEnumerable<string> Keys => entries.Keys;

    /// <summary>True when the key is there; asking this does not mark it.</summary>
    public bool Has(string key) => entries.ContainsKey(key);

    /// <summary>The value of a key with its place, or null; marks the key.</summary>
    public TomlValue? Find(string key)
    {
        asked.Add(key);
        return entries.TryGetValue(key, out var entry) ? entry.Value : null;
    }

    /// <summary>A number in a range; an absent key gives the fallback, or a fault where there is none.</summary>
    /// <param name="key">Key.</param>
    /// <param name="min">Least value allowed.</param>
    /// <param name="max">Greatest value allowed.</param>
    /// <param name="unit">Unit for the message, may be empty.</param>
    /// <param name="fallback">Value when the key is absent; null makes it required.</param>
    public double Number(string key, double min, double max, string unit = "", double? fallback = null)
    {
        var expected = FormattableString.Invariant($"a number from {min} to {max}") + (unit.Length > 0 ? " " + unit : "");
        return Ask(key, expected, fallback, v => v.Kind is TomlKind.Whole or TomlKind.Real && v.Number >= min && v.Number <= max ? (true, v.Number) : (false, 0), min);
    }

    /// <summary>A whole number in a range.</summary>
    /// <inheritdoc cref="Number"/>
    public int Whole(string key, int min, int max, int? fallback = null)
    {
        var expected = min == max ? FormattableString.Invariant($"the number {min}") : FormattableString.Invariant($"a whole number from {min} to {max}");
        return (int)Ask(key, expected, fallback, v => v.Kind == TomlKind.Whole && v.Number >= min && v.Number <= max ? (true, v.Number) : (false, 0), min);
    }

    /// <summary>Words, of at most a length and not empty.</summary>
    /// <param name="key">Key.</param>
    /// <param name="maxLength">Greatest number of characters.</param>
    /// <param name="fallback">Words when the key is absent; null makes it required.</param>
    public string Text(string key, int maxLength = 200, string? fallback = null)
    {
        var expected = FormattableString.Invariant($"{TomlWords.Words}, 1 to {maxLength} characters");
        return Ask(key, expected, fallback, v => v.Kind == TomlKind.Text && v.Text.Length > 0 && v.Text.Length <= maxLength ? (true, v.Text) : (false, ""), "");
    }

    /// <summary>One word out of several.</summary>
    /// <param name="key">Key.</param>
    /// <param name="words">The words allowed.</param>
    /// <param name="fallback">Word when the key is absent; null makes it required.</param>
    public string Word(string key, IReadOnlyList<string> words, string? fallback = null)
    {
        var expected = "one of " + string.Join(", ", words.Select(w => $"\"{w}\""));
        return Ask(key, expected, fallback, v => v.Kind == TomlKind.Text && words.Contains(v.Text) ? (true, v.Text) : (false, ""), words[0]);
    }

    /// <summary>true or false.</summary>
    public bool Flag(string key, bool? fallback = null) =>
        Ask(key, "true or false", fallback, v => v.Kind == TomlKind.Flag ? (true, v.Flag) : (false, false), false);

    /// <summary>A list of numbers of a given length, each in a range.</summary>
    /// <param name="key">Key.</param>
    /// <param name="count">How many.</param>
    /// <param name="min">Least value allowed.</param>
    /// <param name="max">Greatest value allowed.</param>
    /// <param name="unit">Unit for the message.</param>
    /// <returns>The numbers, or null when the key is absent or at fault.</returns>
    public double[]? Numbers(string key, int count, double min, double max, string unit)
    {
        if (Find(key) is not { } value)
            return null;
        var each = FormattableString.Invariant($"a number from {min} to {max} {unit}");
        if (value.Kind != TomlKind.List || value.Items.Count != count)
        {
            var found = value.Kind == TomlKind.List ? value.Items.Count : 1;
            Fault(value, FormattableString.Invariant($"a list of {count} numbers, found {found}") + (found == 2 * count ? TomlWords.CommaInList : ""));
            return null;
        }

        // Twelve wrong ones are one mistake: of the unit, most likely.
        var wrong = value.Items.Where(i => i.Kind is not (TomlKind.Whole or TomlKind.Real) || !(i.Number >= min && i.Number <= max)).ToList();
        if (wrong.Count == 0)
            return [.. value.Items.Select(i => i.Number)];
        Fault(wrong[0], each + (wrong.Count > 1 ? FormattableString.Invariant($" for '{key}', and {wrong.Count - 1} more are not") : ""));
        return null;
    }

    /// <summary>A table below this one; absent gives null, or a fault where it is required.</summary>
    public TomlTable? Table(string key, bool required)
    {
        var value = Find(key);
        if (value?.Table is { } table)
            return table;
        if (value is not null)
            Fault(value, $"a table [{Under(key)}]");
        else if (required && !unreadable.Contains(key))
            missing[key] = faults.AddMissing(File, Line, $"a heading [{Under(key)}] with what belongs to it");
        return null;
    }

    /// <summary>Several tables of one name, [[name]]; absent gives none.</summary>
    public IReadOnlyList<TomlTable> Tables(string key)
    {
        if (Find(key) is not { } value)
            return [];
        if (value.Kind == TomlKind.List && value.Items.All(i => i.Table is not null))
            return [.. value.Items.Select(i => i.Table!)];
        Fault(value, $"tables [[{Under(key)}]]");
        return [];
    }

    /// <summary>Reports a fault at a value of this file.</summary>
    public void Fault(TomlValue value, string expected) => faults.Add(File, value.Line, value.Column, Shown(value), expected);

    /// <summary>Reports that a key is missing, unless its line could not be read, which was told.</summary>
    public void Missing(string key, string expected)
    {
        if (!unreadable.Contains(key))
            missing[key] = faults.AddMissing(File, Line, $"'{key}'" + (Name.Length > 0 ? $" in [{Name}]" : "") + $": {expected}");
    }

    /// <summary>Reports a fault at a key of this table, or at its header where the key is absent.</summary>
    public void FaultAt(string key, string value, string expected)
    {
        if (entries.TryGetValue(key, out var entry))
            faults.Add(File, entry.Value.Line, entry.Value.Column, value, expected);
        else
            faults.Add(File, Line, 0, value, expected);
    }

    /// <summary>Reports every key that nobody asked for; tables below are asked separately.</summary>
    public void ReportUnknown()
    {
        foreach (var (key, entry) in entries.Where(e => !asked.Contains(e.Key)))
        {
            // A key with a slip in its name is not told as missing too.
            if (NearWord.Of(key, asked.Except(unreadable)) is { } meant && missing.Remove(meant, out var fault))
                faults.TakeBack(fault);
            faults.Add(File, entry.Line, entry.Column, key, "a known key" + (Name.Length > 0 ? $" in [{Name}]" : "") + NearWord.Hint(key, asked.Except(unreadable)));
        }
    }

    /// <summary>How a value reads in a message.</summary>
    public static string Shown(TomlValue value) => value.Kind switch
    {
        TomlKind.Text => value.Text,
        TomlKind.Flag => value.Flag ? "true" : "false",
        TomlKind.Whole or TomlKind.Real => value.Number.ToString(CultureInfo.InvariantCulture),
        TomlKind.List => "[" + string.Join(", ", value.Items.Select(Shown)) + "]",
        TomlKind.Table => "a table",
        _ => value.Text,
    };

    internal string Under(string key) => Name.Length == 0 ? key : Name + "." + key;

    internal void Add(string key, TomlValue value, int line, int column) => entries.TryAdd(key, (value, line, column));

    internal TomlTable? Inner(string key) => entries.TryGetValue(key, out var entry) ? entry.Value.Table : null;

    internal TomlTable? Remove(string key) => entries.Remove(key, out var entry) ? entry.Value.Table : null;

    internal void MarkUnreadable(string key) => unreadable.Add(key);

    private static string Hint(TomlValue value, string expected, object? wanted) => (value.Kind, wanted) switch
    {
        (TomlKind.Text, double) => NumberHint.Of(value.Text, inQuotes: true),
        (TomlKind.Text, bool) => TomlWords.Flag(value.Text),
        (TomlKind.Whole or TomlKind.Real or TomlKind.Flag or TomlKind.Moment, string) when expected.StartsWith(TomlWords.Words, StringComparison.Ordinal) => TomlWords.Quotes,
        _ => "",
    };

    private T Ask<T>(string key, string expected, object? fallback, Func<TomlValue, (bool Good, T Value)> take, T stand)
    {
        if (Find(key) is { } value)
        {
            var (good, taken) = take(value);
            if (good)
                return taken;
            Fault(value, $"{expected} for '{key}'" + Hint(value, expected, stand));
        }
        else if (fallback is null)
        {
            Missing(key, expected);
        }

        return fallback switch { null => stand, T same => same, int whole when stand is double => (T)(object)(double)whole, _ => stand };
    }
}
