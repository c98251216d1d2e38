namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>What cores carry, in the order of their numbers.</summary>
internal static class CoreWords
{
    public const string MainsStrip = "X0";
    public const string LowStrip = "X1";
    public const string Spare = "spare";

    public static IReadOnlyList<string> Mains { get; } = ["L", "N", "PE"];

    public static IReadOnlyList<string> MainsContact { get; } = ["L in", "L out", "PE"];

    public static IReadOnlyList<string> Low { get; } = ["+", "0 V"];

    public static IReadOnlyList<string> Sensor { get; } = ["+", "0 V", "signal"];

    public static IReadOnlyList<string> Contact { get; } = ["+", "0 V", "contact in", "contact out"];

    public static IReadOnlyList<string> Reversing { get; } = ["motor a", "motor b"];

    public static IReadOnlyList<string> EitherWay { get; } = ["a", "b"];
}
