using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Files;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Checking;

/// <summary>Looks for numbers such as 1.500, which are one and a half here and fifteen hundred to half of the world.</summary>
internal static partial class GroupedNumbers
{
    private const int LargestFile = 1_000_000;

    /// <summary>A sentence for each.</summary>
    /// <param name="folder">The run.</param>
    public static IEnumerable<string> Of(RunFolder folder)
    {
        var text = InputFile.Read(folder.Scenario, LargestFile, out _) is { } bytes ? System.Text.Encoding.UTF8.GetString(bytes) : "";
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (Grouped().Match(lines[i]) is { Success: true } found && found.Groups["number"].Value is var number)
                yield return CheckWords.Grouped(found.Groups["key"].Value, number, i + 1, double.Parse(number, CultureInfo.InvariantCulture));
        }
    }

    // Of money, heights and hours nobody writes thousandths.
    [GeneratedRegex(@"^\s*(?<key>budget|\w+_rate_per_hour|build_hours|elevation_m)\s*=\s*(?<number>[1-9]\d{0,2}\.\d{3})\s*(#.*)?$", RegexOptions.NonBacktracking)]
    private static partial Regex Grouped();
}
