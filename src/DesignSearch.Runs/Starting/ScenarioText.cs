using System.Globalization;
using System.Text.RegularExpressions;

namespace DesignSearch.Runs.Starting;

/// <summary>The text of a scenario, changed line by line: what is not asked for keeps its words, its remarks and its place.</summary>
/// <param name="text">The text as it stands.</param>
public sealed partial class ScenarioText(string text)
{
    private readonly List<string> lines = [.. text.ReplaceLineEndings("\n").Split('\n')];

    /// <summary>Sets a number.</summary>
    /// <param name="table">Heading without brackets; empty for the top of the file.</param>
    /// <param name="key">Key.</param>
    /// <param name="value">Any finite number.</param>
    public void Set(string table, string key, double value) => Put(table, key, value.ToString("0.####", CultureInfo.InvariantCulture));

    /// <summary>Sets words.</summary>
    /// <inheritdoc cref="Set(string, string, double)"/>
    public void Set(string table, string key, string value) =>
        Put(table, key, "\"" + Plain(value).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"");

    /// <summary>Sets true or false.</summary>
    /// <inheritdoc cref="Set(string, string, double)"/>
    public void Set(string table, string key, bool value) => Put(table, key, value ? "true" : "false");

    /// <summary>Sets a list of numbers.</summary>
    /// <inheritdoc cref="Set(string, string, double)"/>
    public void Set(string table, string key, IEnumerable<double> values) =>
        Put(table, key, "[" + string.Join(", ", values.Select(v => v.ToString("0.##", CultureInfo.InvariantCulture))) + "]");

    /// <summary>Makes a key a remark, so that the file is silent about it.</summary>
    /// <param name="table">Heading without brackets.</param>
    /// <param name="key">Key.</param>
    public void Leave(string table, string key)
    {
        if (Find(table, key, isRemark: false) is not { } at)
            return;
        for (var line = at; line <= LastOf(at); line++)
            lines[line] = "# " + lines[line];
    }

    /// <summary>Puts a remark above a key, once.</summary>
    /// <param name="table">Heading without brackets.</param>
    /// <param name="key">Key.</param>
    /// <param name="remark">What it says, without the sign.</param>
    public void Remark(string table, string key, string remark)
    {
        if (Find(table, key, isRemark: false) is { } at && (at == 0 || lines[at - 1] != "# " + remark))
            lines.Insert(at, "# " + remark);
    }

    /// <summary>Takes a remark above a key away again.</summary>
    /// <inheritdoc cref="Remark"/>
    public void Unmark(string table, string key, string remark)
    {
        if (Find(table, key, isRemark: false) is { } at && at > 0 && lines[at - 1] == "# " + remark)
            lines.RemoveAt(at - 1);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join('\n', lines);

    private static string Plain(string words) => string.Concat(words.Where(c => !char.IsControl(c)));

    private void Put(string table, string key, string value)
    {
        if ((Find(table, key, isRemark: false) ?? Find(table, key, isRemark: true)) is { } at)
        {
            var last = LastOf(at);
            lines[at] = Line(key, value, Behind(lines[last]));
            lines.RemoveRange(at + 1, last - at);
            return;
        }

        var (first, end) = Range(table);
        if (first < 0)
        {
            lines.AddRange(["", $"[{table}]", Line(key, value, "")]);
            return;
        }

        while (end > first && lines[end - 1].Trim().Length == 0)
            end--;
        lines.Insert(end, Line(key, value, ""));
    }

    // A remark keeps its column where there is room.
    private static string Line(string key, string value, string remark)
    {
        const int column = 34;
        var line = $"{key} = {value}";
        return remark.Length == 0 ? line : line.PadRight(line.Length < column ? column : line.Length + 3) + remark;
    }

    private static string Behind(string line) => RemarkBehind().Match(line) is { Success: true } found ? found.Groups["remark"].Value : "";

    // A list may go on over several lines, words in three quotes too.
    private int LastOf(int at)
    {
        var value = lines[at][(lines[at].IndexOf('=', StringComparison.Ordinal) + 1)..].Trim();
        if (value.StartsWith("\"\"\"", StringComparison.Ordinal))
        {
            if (value.IndexOf("\"\"\"", 3, StringComparison.Ordinal) >= 0)
                return at;
            return lines.FindIndex(at + 1, l => l.Contains("\"\"\"", StringComparison.Ordinal)) is >= 0 and var closing ? closing : at;
        }

        if (!value.StartsWith('[') || value.Contains(']', StringComparison.Ordinal))
            return at;
        return lines.FindIndex(at + 1, l => l.Contains(']', StringComparison.Ordinal)) is >= 0 and var last ? last : at;
    }

    private int? Find(string table, string key, bool isRemark)
    {
        var (first, end) = Range(table);
        var start = isRemark ? $"# {key} =" : key;
        for (var at = first; at >= 0 && at < end; at++)
        {
            var line = lines[at].TrimStart();
            if (line.StartsWith(start, StringComparison.Ordinal) && (isRemark || line[start.Length..].TrimStart().StartsWith('=')))
                return at;
        }

        return null;
    }

    private (int First, int End) Range(string table)
    {
        var first = table.Length == 0 ? 0 : lines.FindIndex(l => Heading().Match(l) is { Success: true } h && h.Groups["name"].Value == table) + 1;
        if (table.Length > 0 && first == 0)
            return (-1, -1);
        var next = lines.FindIndex(first, l => AnyHeading().IsMatch(l));
        return (first, next < 0 ? lines.Count : next);
    }

    [GeneratedRegex(@"^\s*\[\s*(?<name>[\w-]+)\s*\]", RegexOptions.NonBacktracking)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^\s*\[{1,2}\s*[A-Za-z][\w-]*\s*\]{1,2}\s*(#.*)?$", RegexOptions.NonBacktracking)]
    private static partial Regex AnyHeading();

    [GeneratedRegex("""^\s*(?:#\s*)?(?:[\w-]+\s*=)?(?:"(?:[^"\\]|\\.)*"|[^"#])*(?<remark>#.*)$""")]
    private static partial Regex RemarkBehind();
}
