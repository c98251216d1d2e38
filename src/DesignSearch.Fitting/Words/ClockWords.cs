using System.Globalization;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Fitting.Words;

/// <summary>What is said of a log's clock.</summary>
internal static class ClockWords
{
    public static string Dull(int days) =>
        "The clock could not be held against the sun: "
            + (days == 0 ? "no day was" : days == 1 ? "one day was" : $"{days} days were") + " sunny enough.";

    public static string Jump(DateTime day, double hours) => Written.Sentence(
        $"The clock jumps about {day.ToString("d MMMM", CultureInfo.InvariantCulture)}: by {Math.Abs(hours):0.0} h",
        $"{(hours > 0 ? "forward" : "back")} against the sun. Each part was set right by itself.");

    public static string Apart(string table, string inside, int late) => Written.Sentence(
        $"The clock of {table} stands about {Math.Abs(late)} h {(late > 0 ? "ahead of" : "behind")} that of {inside}:",
        $"it was moved. Set all clocks by one before you log.");

    public static string Off(int late, int days) => Written.Sentence(
        $"Against the sun the clock is {Math.Abs(late)} h {(late > 0 ? "fast" : "slow")} ({Written.Count(days, "sunny day")}):",
        $"it was set right. Are its times of another zone?");

    public static string Right(int days, double hours) => Written.Sentence(
        $"Against the sun the clock is right to about an hour ({Written.Count(days, "sunny day")}, {hours:0.0} h).");
}
