using System.IO.Compression;

namespace DesignSearch.Files;

/// <summary>Bytes packed by gzip, as archives hand them out. Several packed files one after the other count as one.</summary>
public static class PackedBytes
{
    private const int ChunkBytes = 1 << 16;

    /// <summary>True when the bytes say that they are packed.</summary>
    public static bool ArePacked(ReadOnlySpan<byte> bytes) => bytes is [0x1F, 0x8B, ..];

    /// <summary>Unpacks, and stops as soon as more comes out than is allowed: a small file can hold a very large one.</summary>
    /// <param name="bytes">Packed ones.</param>
    /// <param name="most">Greatest size unpacked [bytes].</param>
    /// <param name="expected">What should be there where they cannot be unpacked, as a fault says it; else empty.</param>
    /// <returns>What was packed; null where it cannot be unpacked or is too large.</returns>
    public static byte[]? Unpack(byte[] bytes, long most, out string expected)
    {
        expected = "";
        try
        {
            using var packed = new GZipStream(new MemoryStream(bytes, writable: false), CompressionMode.Decompress);
            using var whole = new MemoryStream();
            var chunk = new byte[ChunkBytes];
            for (int n; (n = packed.Read(chunk, 0, chunk.Length)) > 0;)
            {
                if (whole.Length + n > most)
                {
                    expected = FormattableString.Invariant($"a packed file that holds at most {most / 1_000_000} MB unpacked");
                    return null;
                }

                whole.Write(chunk, 0, n);
            }

            return whole.ToArray();
        }
        catch (InvalidDataException)
        {
            expected = "a packed file (.gz) that is whole; it is damaged or cut short";
            return null;
        }
    }
}
