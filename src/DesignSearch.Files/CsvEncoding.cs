using System.Text;

namespace DesignSearch.Files;

/// <summary>Turns the bytes of a text file into text, or says why they are none.</summary>
internal static class CsvEncoding
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static bool TryDecode(string file, byte[] bytes, FaultList faults, out string text)
    {
        text = "";
        var body = bytes.AsSpan();
        if (body.StartsWith("\uFEFF"u8))
            body = body[3..];
        try
        {
            text = Strict.GetString(body);
        }
        catch (DecoderFallbackException e)
        {
            var line = 1 + body[..Math.Max(0, e.Index)].Count((byte)'\n');
            faults.Add(file, line, 0, "", "text in UTF-8, but this line holds other bytes (save the file again as UTF-8)");
            return false;
        }

        var strange = text.AsSpan().IndexOf('\0');
        if (strange < 0)
            return true;
        faults.Add(file, 1 + text.AsSpan(0, strange).Count('\n'), 0, "", "plain text, but this line holds a NUL character");
        return false;
    }
}
