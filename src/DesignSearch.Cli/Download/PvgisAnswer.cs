using System.Text;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;

namespace DesignSearch.Cli.Download;

/// <summary>Looks whether what the service sent is the weather that was asked for, by reading it as the program will read the file.</summary>
internal static class PvgisAnswer
{
    // The service repeats the place in its head, with three decimals.
    private const double SamePlaceDeg = 0.01;

    // Rows begin and end at UTC, the record at standard time.
    private const int LostAtTheEnds = 30;
    private const int TypicalHours = 8760;
    private const string Head = "Latitude (decimal degrees):";

    /// <summary>Reads it.</summary>
    /// <param name="bytes">What came.</param>
    /// <param name="query">What was asked for.</param>
    /// <param name="host">Who sent it.</param>
    /// <param name="name">Name that the weather goes by.</param>
    /// <exception cref="DownloadException">It is something else.</exception>
    public static WeatherRecord Read(byte[] bytes, PvgisQuery query, string host, string name)
    {
        switch (Encoding.UTF8.GetString(bytes, 0, Math.Min(bytes.Length, 100)).TrimStart('\uFEFF', ' ', '\t', '\r', '\n'))
        {
            case "":
                throw new DownloadException(PvgisWords.Empty(host), mayPass: true);
            case ['<', ..]:
                throw new DownloadException(PvgisWords.Page(host));
            case var text when !text.StartsWith(Head, StringComparison.Ordinal):
                throw new DownloadException(PvgisWords.NoTable(host, PvgisService.Message(bytes)));
        }

        var record = Parsed(bytes, host, name);
        if (Math.Abs(record.Place.LatitudeDeg - query.LatitudeDeg) > SamePlaceDeg || Turn(record.Place.LongitudeDeg - query.LongitudeDeg) > SamePlaceDeg)
            throw new DownloadException(PvgisWords.WrongPlace(query, host, record.Place.LatitudeDeg, record.Place.LongitudeDeg));
        if (!IsWhole(record, query))
            throw new DownloadException(PvgisWords.WrongSpan(query, host, record.Period, record.Hours));
        return record;
    }

    private static bool IsWhole(WeatherRecord record, PvgisQuery query) => query.Years is { } years
        ? !record.IsTypicalYear && record.Period == years.ToString() && record.Hours >= years.Hours - LostAtTheEnds
        : record.IsTypicalYear && record.Hours == TypicalHours;

    // 180 degrees east is 180 degrees west.
    private static double Turn(double degrees) => Math.Abs(Math.IEEERemainder(degrees, 360));

    private static WeatherRecord Parsed(byte[] bytes, string host, string name)
    {
        var folder = Directory.CreateTempSubdirectory("designsearch-");
        try
        {
            var file = Path.Combine(folder.FullName, name);
            File.WriteAllBytes(file, bytes);
            return WeatherFile.Read(file);
        }
        catch (InputException e)
        {
            throw new DownloadException(PvgisWords.Unreadable(host, e.Faults[0].Expected));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
