using System.Globalization;
using System.Text;
using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Stations;

/// <summary>
/// Monthly figures of the 1 011 sites of the public typical-year set of the United States (NSRDB update 1991–2005, TMY3; U.S. Department of
/// Energy and National Renewable Energy Laboratory, free to use with credit), and for 596 of them how their days differ.
/// </summary>
public static class StationTable
{
    /// <summary>Where the figures come from and whom to thank.</summary>
    public const string Credit =
        "NSRDB 1991-2005 update, typical years TMY3, National Renewable Energy Laboratory and U.S. Department of Energy";

    /// <summary>On what terms they may be used.</summary>
    public const string Licence = "data of the U.S. Government, free to use and copy with credit to both, no warranty";

    private const int MonthsOfYear = 12;
    private const int FirstMonthly = 8;
    private const int Kinds = 8;
    private static readonly Lazy<IReadOnlyList<Station>> Read = new(Load);

    /// <summary>Every station, in the order of the table.</summary>
    public static IReadOnlyList<Station> All => Read.Value;

    /// <summary>The stations nearest to a point, nearest first.</summary>
    /// <param name="latitudeDeg">North positive [°].</param>
    /// <param name="longitudeDeg">East positive [°].</param>
    /// <param name="count">How many.</param>
    public static IReadOnlyList<Station> Nearest(double latitudeDeg, double longitudeDeg, int count) =>
        [.. All.OrderBy(s => s.DistanceKm(latitudeDeg, longitudeDeg)).Take(count)];

    private static List<Station> Load()
    {
        using var stream = typeof(StationTable).Assembly.GetManifestResourceStream("Stations.stations.csv")
            ?? throw new InvalidOperationException("The program was built without its table of stations.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var stations = new List<Station>();
        reader.ReadLine();
        while (reader.ReadLine() is { } line)
            stations.Add(Of(line.Split(',')));
        return stations;
    }

    private static Station Of(string[] cells)
    {
        double Number(int column) => double.Parse(cells[column], NumberStyles.Float, CultureInfo.InvariantCulture);
        double[] Twelve(int kind) => [.. Enumerable.Range(FirstMonthly + MonthsOfYear * kind, MonthsOfYear).Select(Number)];
        var (air, low, sun, wind, humidity) = (Twelve(0), Twelve(1), Twelve(2), Twelve(3), Twelve(4));
        var after = FirstMonthly + MonthsOfYear * Kinds;
        return new(
            new($"{cells[1]}, {cells[2]}", Number(4), Number(5), Number(6), Number(3)),
            [.. Enumerable.Range(0, MonthsOfYear).Select(m => MonthMeans.OfHourMeans(air[m], low[m], sun[m], wind[m], humidity[m]))],
            Number(7),
            cells.Length > after ? new(Twelve(5), Twelve(6), Twelve(7), Number(after), Number(after + 1)) : null);
    }
}
