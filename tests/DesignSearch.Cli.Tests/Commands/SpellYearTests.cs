using System.Globalization;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Among the winters of an archive a cold spell is told with its year.</summary>
public sealed class SpellYearTests
{
    [Fact]
    public void A_spell_of_an_archive_has_its_year()
    {
        var folder = Directory.CreateTempSubdirectory("designsearch-");
        try
        {
            // Invented: a smooth year of 8 K about 9 °C, seven days of February 2022 at -14 °C.
            var lines = new List<string> { "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"" };
            for (var day = new DateOnly(2021, 1, 1); day.Year < 2024; day = day.AddDays(1))
            {
                var cold = day.Year == 2022 && day.Month == 2 && day.Day is >= 8 and <= 14;
                var low = (int)Math.Round(10 * (cold ? -14 : 9 - 8 * Math.Cos((day.DayOfYear - 20) * Math.PI / 182.5) - day.Day % 5));
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"\"XXM00099999\",\"{day:yyyy-MM-dd}\",\"46.3\",\"13.9\",\"640.0\",\"MADE FLAT, XX\",\"{low + 85 + 7 * (day.Day % 4)}\",\",,W\",\"{low}\",\",,W\""));
            }

            var file = Path.Combine(folder.FullName, "days.csv");
            File.WriteAllLines(file, lines);
            var (code, output, error) = Cli.Run("weather", file);
            Assert.True(code == ExitCode.Done, error);
            Assert.Matches("days from [78] February 2022: mean -", output.Replace("−", "-", StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
