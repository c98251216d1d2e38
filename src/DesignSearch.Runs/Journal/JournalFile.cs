using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using DesignSearch.Files;
using DesignSearch.Search;

namespace DesignSearch.Runs.Journal;

/// <summary>
/// Every simulated layout in the order of the search, one line each, flushed after every block. A line carries a check sum, so that
/// a line torn by a kill is known and dropped; a search taken up reads the good lines back instead of simulating them again.
/// </summary>
public sealed class JournalFile : IDisposable
{
    private const string Opening = "designsearch journal 1";

    private static readonly JsonSerializerOptions Strict = new() { RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true };

    private readonly FileStream stream;

    private JournalFile(FileStream stream) => this.stream = stream;

    /// <summary>Begins a new journal.</summary>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static JournalFile Begin(string path, JournalHead head)
    {
        var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.Read);
        var journal = new JournalFile(stream);
        journal.Line(Opening);
        journal.Line(JsonSerializer.Serialize(head));
        journal.Flush();
        return journal;
    }

    /// <summary>Takes up a journal: reads its good lines, cuts off a torn tail and goes on behind them.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="head">What the search is run with now.</param>
    /// <param name="points">The evaluated points so far, in order.</param>
    /// <exception cref="InputException">It was begun with other inputs or another version, each difference is named; or a line is not of a journal.</exception>
    public static JournalFile TakeUp(string path, JournalHead head, out IReadOnlyList<(double[] Point, Evaluation Evaluation)> points)
    {
        var stream = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read);
        try
        {
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            var (lines, good) = GoodLines(bytes);
            points = [];
            if (lines.Count < 2 && (lines.Count == 0 || lines[0] == Opening))
            {
                // Killed before its head was whole: nothing is lost by beginning again.
                stream.Dispose();
                return Begin(path, head);
            }

            if (lines[0] != Opening)
                throw new InputException(new InputFault(path, 1, 0, lines[0], $"a journal that begins with '{Opening}'; start afresh with --force"));
            var then = Head(lines[1]) ?? throw new InputException(new InputFault(path, 2, 0, lines[1], "what the search was begun with; start afresh with --force"));
            if (then.DifferencesTo(head) is { Count: > 0 } differences)
                throw new InputException([.. differences.Select(d => new InputFault(path, 2, 0, "", $"the search as it was begun, but {d}; start afresh with --force"))]);
            points = ParseAll(path, lines);
            stream.SetLength(good);
            stream.Position = good;
            return new JournalFile(stream);
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    /// <summary>Every evaluated point of a journal, in order; a torn tail is left out.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static IReadOnlyList<(double[] Point, Evaluation Evaluation)> Points(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return ParseAll(path, GoodLines(bytes).Lines);
    }

    /// <summary>Adds evaluated points and flushes them to the disk.</summary>
    public void Append(IEnumerable<(double[] Point, Evaluation Evaluation)> points)
    {
        foreach (var (point, evaluation) in points)
            Line($"{Numbers(point)};{Numbers(evaluation.Objectives)};{Numbers(evaluation.Violations)};{Numbers([evaluation.Merit])}");
        Flush();
    }

    /// <inheritdoc/>
    public void Dispose() => FileLimit.Guard(stream.Name, stream.Dispose);

    private static (List<string> Lines, long GoodLength) GoodLines(byte[] bytes)
    {
        var lines = new List<string>();
        var start = 0;
        for (int end; (end = Array.IndexOf(bytes, (byte)'\n', start)) >= 0; start = end + 1)
        {
            var text = Encoding.UTF8.GetString(bytes, start, end - start);
            var gap = text.LastIndexOf(' ');
            if (gap < 0 || text[(gap + 1)..] != Sum(text[..gap]))
                break;
            lines.Add(text[..gap]);
        }

        return (lines, start);
    }

    private static JournalHead? Head(string line)
    {
        try
        {
            return JsonSerializer.Deserialize<JournalHead>(line, Strict);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    // A line whose check sum fits was written whole; one that still makes no sense was written by something else.
    private static List<(double[] Point, Evaluation Evaluation)> ParseAll(string path, List<string> lines)
    {
        var points = new List<(double[] Point, Evaluation Evaluation)>(lines.Count);
        for (var i = 2; i < lines.Count; i++)
        {
            try
            {
                points.Add(Parse(lines[i]));
            }
            catch (Exception e) when (e is FormatException or IndexOutOfRangeException)
            {
                throw new InputException(new InputFault(path, i + 1, 0, lines[i], "levels; objectives; violations; merit of a layout; start afresh with --force"));
            }
        }

        return points;
    }

    private static (double[] Point, Evaluation Evaluation) Parse(string line)
    {
        var parts = line.Split(';');
        if (parts.Length > 4)
            throw new FormatException();
        return (Read(parts[0]), new Evaluation(Read(parts[1]), Read(parts[2]), Read(parts[3])[0]));
    }

    private static double[] Read(string list) => list.Length == 0 ? [] : [.. list.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

    private static string Numbers(IReadOnlyList<double> values) => string.Join(',', values.Select(v => v.ToString("R", CultureInfo.InvariantCulture)));

    private static string Sum(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 4));

    private void Line(string text) => FileLimit.Guard(stream.Name, () => stream.Write(Encoding.UTF8.GetBytes($"{text} {Sum(text)}\n")));

    private void Flush() => FileLimit.Guard(stream.Name, () => stream.Flush(flushToDisk: true));
}
