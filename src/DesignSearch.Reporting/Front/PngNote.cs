using System.Buffers.Binary;
using System.Text;

namespace DesignSearch.Reporting.Front;

/// <summary>Writes a line of text into a PNG file without touching its picture.</summary>
/// <remarks>Chunk layout and checksum: W3C Recommendation "Portable Network Graphics (PNG) Specification", second edition, 2003, sections 5.3, 5.5 and 11.3.4.3.</remarks>
internal static class PngNote
{
    private const int SignatureAndHeader = 8 + 25;

    /// <summary>The same picture with a text chunk "Comment" right after its header.</summary>
    /// <param name="png">A whole PNG file.</param>
    /// <param name="comment">Plain Latin text.</param>
    public static byte[] Add(byte[] png, string comment)
    {
        var body = Encoding.Latin1.GetBytes("tEXtComment\0" + comment);
        var chunk = new byte[body.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(chunk, body.Length - 4);
        body.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(body.Length + 4), Checksum(body));
        return [.. png.AsSpan(0, SignatureAndHeader), .. chunk, .. png.AsSpan(SignatureAndHeader)];
    }

    private static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        var rest = uint.MaxValue;
        foreach (var one in bytes)
        {
            rest ^= one;
            for (var bit = 0; bit < 8; bit++)
                rest = (rest >> 1) ^ ((rest & 1) * 0xEDB88320u);
        }

        return ~rest;
    }
}
