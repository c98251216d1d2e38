using DesignSearch.Layouts.Words;

namespace DesignSearch.Cli.Download;

/// <summary>What is said about asking the service.</summary>
internal static class PvgisWords
{
    /// <summary>Whom to thank, as the providers ask for it.</summary>
    public static readonly string[] Credit =
    [
        "The data are those of PVGIS (c) European Union, European Commission, Joint Research Centre: free to use, thanks are asked for.",
        "They contain modified Copernicus Climate Change Service information; neither the Commission nor ECMWF answers for their use.",
    ];

    public static string Asked(PvgisQuery query, string host) => Written.Sentence(
        $"Asked PVGIS, the service of the European Commission's Joint Research Centre ({host}),",
        $"for {(query.Years is null ? "its typical year" : $"the hours of {query.Years}")} at {Place(query)}.");

    public static string Beginning(string host) => $"Asking PVGIS ({host}) for weather; it takes up to some minutes …";

    public static string Again(string sentence) => sentence + " Trying once more.";

    public static string NoName(string host) =>
        $"{host} is not known to this machine's network; is it connected? "
            + "A weather file can also be downloaded elsewhere and carried here.";

    public static string NoWay(string host) =>
        $"{host} cannot be reached: the connection was refused or lost; is this machine on the network, and does a firewall let it out?";

    public static string NoTrust(string host) =>
        $"No trusted connection to {host}: its certificate is not accepted, or something stands between; "
            + "is the clock of this machine right?";

    public static string NoProxy(string host) => $"{host} cannot be reached: the proxy of this machine's network refuses it.";

    public static string NoSense(string host) => $"{host} answers, but not as a web service does; nothing was taken from it.";

    public static string Late(string host, TimeSpan limit) => Written.Sentence(
        $"{host} did not answer within {limit.TotalSeconds:0.#} s; it may be busy, try again later.");

    public static string Slow(string host, TimeSpan limit) => Written.Sentence(
        $"{host} had not sent all of its answer after {limit.TotalSeconds:0.#} s; try again later, or ask for fewer years.");

    public static string Broken(string host) => $"The answer of {host} broke off in the middle; try again.";

    public static string Large(string host, long bytes) => Written.Sentence(
        $"{host} sends more than {bytes / 1e6:0.#} MB, which no weather of one place is; nothing of it was kept.");

    public static string Busy(string host, int status) =>
        $"{host} has too much to do or a fault of its own (answer {status}); try again later.";

    public static string Moved(string host, int status) =>
        $"{host} has no such service any more (answer {status}); this version of the program may be too old for it.";

    public static string Refused(string host, int status, string message) => message.Length == 0
        ? $"{host} refuses the question (answer {status}) and does not say why."
        : $"PVGIS has nothing for this place: it says \"{message}\" (answer {status})."
            + (message.Contains("sea", StringComparison.OrdinalIgnoreCase) ? " On a coast, try a point some kilometres inland." : "");

    public static string Elsewhere(string host, string target) =>
        $"{host} sends on to {target}; only {host} is asked, and only by https, so it was not followed.";

    public static string Circle(string host) => $"{host} sends on again and again without an answer.";

    public static string Empty(string host) => $"The answer of {host} is empty; try again later.";

    public static string Page(string host) =>
        $"{host} answers with a web page, not with weather; does this network want you to log in first, or is the service being repaired?";

    public static string NoTable(string host, string message) => message.Length == 0
        ? $"{host} answers with something else than a table of weather."
        : $"{host} answers with a message, not with weather: \"{message}\".";

    public static string Unreadable(string host, string expected) => $"What {host} sent cannot be read as weather; expected {expected}.";

    public static string WrongPlace(PvgisQuery query, string host, double latitudeDeg, double longitudeDeg) => Written.Sentence(
        $"{host} sent the weather of {latitudeDeg:0.###}, {longitudeDeg:0.###}, not of {Place(query)}; it was not kept.");

    public static string WrongSpan(PvgisQuery query, string host, string period, int hours)
    {
        var wanted = query.Years is { } years ? $"all hours of {years}" : "a whole typical year";
        return Written.Sentence($"{host} sent {hours} hours of {period}, not {wanted}; it was not kept.");
    }

    public static string Saved(string file) => $"Saved as {file}. To use it, write under [climate] in the scenario beside it:";

    public static string Line(string file)
    {
        var name = Path.GetFileName(file).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
        return $"weather_file = \"{name}\"";
    }

    private static string Place(PvgisQuery query) =>
        FormattableString.Invariant($"{query.LatitudeDeg:0.####}, {query.LongitudeDeg:0.####}");
}
