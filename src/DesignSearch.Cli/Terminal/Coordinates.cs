using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>A place as a command line names it: LATITUDE,LONGITUDE in degrees, south and west negative.</summary>
/// <param name="LatitudeDeg">North positive, −90 to 90.</param>
/// <param name="LongitudeDeg">East positive, −180 to 180.</param>
internal sealed record Coordinates(double LatitudeDeg, double LongitudeDeg)
{
    private const double MostNorth = 90;
    private const double MostEast = 180;

    /// <summary>What is expected, for a sentence.</summary>
    public const string Expected = "LATITUDE,LONGITUDE in degrees with decimal points, for instance 46.3,13.9; south and west are negative";

    /// <summary>True where a word can only be meant as coordinates: it begins like a number.</summary>
    public static bool IsMeant(string word) => word.Trim() is [>= '0' and <= '9' or '-' or '+' or '.', ..] && word.Contains(',', StringComparison.Ordinal);

    /// <summary>Reads them; null where they are none.</summary>
    public static Coordinates? Of(string word) =>
        word.Split(',') is [var latitude, var longitude] && PlainNumber.TryRead(latitude, out var north) && PlainNumber.TryRead(longitude, out var east)
        && Math.Abs(north) <= MostNorth && Math.Abs(east) <= MostEast
            ? new(north, east)
            : null;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{LatitudeDeg:0.####},{LongitudeDeg:0.####}");
}
