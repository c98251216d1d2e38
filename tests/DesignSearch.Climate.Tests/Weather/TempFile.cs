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

    public static IReadOnlyList<InputFault> Faults(string text, ReadingOptions? options = null) => Assert.Throws<InputException>(() => Read(text, options)).Faults;
}
