using System.Text;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>A weather file as text: its lines, and its tree where it is JSON.</summary>
internal sealed class SourceText
{
    private const long LargestBytes = 200_000_000;

    // Twenty years of ten minutes each are a million.
    private const int MostLines = 2_000_000;
    private const int FirstBytes = 400;

    private SourceText(string[] lines, JsonTree? json)
    {
        (Lines, Json) = (lines, json);
    }

    /// <summary>Its lines; of JSON only how it begins.</summary>
    public string[] Lines { get; }

    /// <summary>What stands in it, where it is JSON.</summary>
    public JsonTree? Json { get; }

    /// <summary>Reads a file, packed or not.</summary>
    /// <exception cref="InputException">It cannot be read, is too large, unpacked too, or is JSON that is none.</exception>
    public static SourceText Read(string path)
    {
        if (InputFile.Read(path, LargestBytes, out var expected) is not { } bytes)
            throw new InputException(new InputFault(path, 0, 0, "", expected.Replace("a file", "a weather file", StringComparison.Ordinal)));
        if (PackedBytes.ArePacked(bytes))
            bytes = PackedBytes.Unpack(bytes, LargestBytes, out expected) ?? throw new InputException(new InputFault(path, 0, 0, "", expected));
        if (bytes.AsSpan().Count((byte)'\n') is > MostLines and var many)
            throw new InputException(new InputFault(
                path, 0, 0, FormattableString.Invariant($"{many} lines"), FormattableString.Invariant($"a weather file of at most {MostLines} lines")));
        if (JsonStart(bytes) is { } start)
        {
            var tree = JsonTree.Read(path, start > 0 ? bytes[start..] : bytes);
            return new([Encoding.UTF8.GetString(bytes, start, Math.Min(FirstBytes, bytes.Length - start)).Split('\n')[0]], tree);
        }

        var lines = Decode(bytes).Split('\n');
        var empty = true;
        for (var l = 0; l < lines.Length; l++)
        {
            if (lines[l].EndsWith('\r'))
                lines[l] = lines[l].TrimEnd('\r');
            empty &= lines[l].AsSpan().Trim().Length == 0;
        }

        return empty ? throw new InputException(new InputFault(path, 0, 0, "", "a weather file that is not empty")) : new(lines, null);
    }

    // JSON begins with a brace, or with a list of braces; behind a mark of UTF-8 where there is one.
    private static int? JsonStart(byte[] bytes)
    {
        var start = bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        var text = bytes.AsSpan(start).TrimStart(" \t\r\n"u8);
        if (text is [(byte)'[', ..])
            text = text[1..].TrimStart(" \t\r\n"u8);
        return text is [(byte)'{', ..] ? start : null;
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
