using System.Text;
using DesignSearch.Climate.Formats;
using DesignSearch.Files;

namespace DesignSearch.Climate.Weather;

/// <summary>Reads weather files of any known format, recognised by what stands in them.</summary>
public static class WeatherFile
{
    private const long LargestBytes = 200_000_000;

    // Twenty years of ten minutes each are a million.
    private const int MostLines = 2_000_000;

    /// <summary>Reads one file into hour means of local standard time.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What the file does not say itself.</param>
    /// <exception cref="InputException">The file is missing, of no known format, or damaged beyond the repairs; every fault with its place.</exception>
    public static WeatherRecord Read(string path, ReadingOptions? options = null)
    {
        var lines = ReadLines(path);
        var maps = KnownFormats.All(options?.FormatsFolder ?? Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, "formats"));
        var map = maps.FirstOrDefault(m => Recognises(m, lines))
            ?? throw new InputException(new InputFault(
                path, 1, 0, lines[0],
                "the head and column names of a format that can be read: " + string.Join("; ", maps.Select(m => m.Title))));
        return new RecordMaker(path, map, lines, options ?? new()).Make();
    }

    private static bool Recognises(FormatMap map, string[] lines)
    {
        if (map.Detect.Count == 0)
            return TableColumns.Find(map, lines) is not null;
        var head = Plain(string.Join('\n', lines.Take(60)));
        return map.Detect.All(d => head.Contains(Plain(d), StringComparison.OrdinalIgnoreCase));

        // Spreadsheets save other separators and quotes.
        static string Plain(string text) => text.Replace(';', ',').Replace('\t', ',').Replace("\"", "", StringComparison.Ordinal);
    }

    private static string[] ReadLines(string path)
    {
        if (InputFile.Read(path, LargestBytes, out var expected) is not { } bytes)
            throw new InputException(new InputFault(path, 0, 0, "", expected.Replace("a file", "a weather file", StringComparison.Ordinal)));
        if (bytes.AsSpan().Count((byte)'\n') is > MostLines and var many)
            throw new InputException(new InputFault(
                path, 0, 0, FormattableString.Invariant($"{many} lines"), FormattableString.Invariant($"a weather file of at most {MostLines} lines")));
        var text = Decode(bytes);
        var lines = text.Split('\n').Select(l => l.TrimEnd('\r')).ToArray();
        return lines.All(l => l.Trim().Length == 0) ? throw new InputException(new InputFault(path, 0, 0, "", "a weather file that is not empty")) : lines;
    }

    // UTF-8 where it is valid, UTF-16 with its mark, else one byte a character: old spreadsheets write the degree sign so.
    private static string Decode(byte[] bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return (bytes[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(bytes, 2, bytes.Length - 2);
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
