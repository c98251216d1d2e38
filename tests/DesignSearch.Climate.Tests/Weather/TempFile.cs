using System.IO.Compression;
using System.Text;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Reads text as if it were a weather file.</summary>
internal static class TempFile
{
    public static WeatherRecord Read(string text, ReadingOptions? options = null, Encoding? encoding = null, string name = "made.csv")
    {
        var folder = Directory.CreateTempSubdirectory("weather");
        try
        {
            var path = Path.Combine(folder.FullName, name);
            File.WriteAllText(path, text, encoding ?? new UTF8Encoding(false));
            return WeatherFile.Read(path, options);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Reads bytes as they are.</summary>
    public static WeatherRecord Read(byte[] bytes, ReadingOptions? options = null, string name = "made.gz")
    {
        var folder = Directory.CreateTempSubdirectory("weather");
        try
        {
            var path = Path.Combine(folder.FullName, name);
            File.WriteAllBytes(path, bytes);
            return WeatherFile.Read(path, options);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Packs text by gzip.</summary>
    public static byte[] Packed(string text)
    {
        using var whole = new MemoryStream();
        using (var packed = new GZipStream(whole, CompressionLevel.Fastest))
            packed.Write(Encoding.UTF8.GetBytes(text));
        return whole.ToArray();
    }

    public static IReadOnlyList<InputFault> Faults(string text, ReadingOptions? options = null) => Assert.Throws<InputException>(() => Read(text, options)).Faults;
}
