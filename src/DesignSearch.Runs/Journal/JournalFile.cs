using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using DesignSearch.Files;
using DesignSearch.Runs.Folder;
using DesignSearch.Search;

namespace DesignSearch.Runs.Journal;

/// <summary>
/// Every simulated layout in the order of the search, one line each, flushed after every block. A line carries a check sum, so that
/// a line torn by a kill is known and dropped; a search taken up reads the good lines back instead of simulating them again.
/// </summary>
public sealed class JournalFile : IDisposable
{
    private const string Opening = "designsearch journal 1";
    private const long MostBytes = 1_000_000_000;

    private static readonly JsonSerializerOptions Strict = new() { RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true };

    private readonly FileStream stream;

    private readonly List<(double[] Point, Evaluation Evaluation)> evaluated = [];

    private JournalFile(FileStream stream) => this.stream = stream;

    /// <summary>Every evaluated point so far, in order.</summary>
    public IReadOnlyList<(double[] Point, Evaluation Evaluation)> Evaluated => evaluated;

    /// <summary>Begins a new journal.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="head">What the search is run with.</param>
    /// <param name="over">True to begin over an older one.</param>
    /// <param name="held">Called when the journal belongs to this process, before anything in it is changed.</param>
    /// <exception cref="InputException">What lies there is none of a search.</exception>
    /// <exception cref="IOException">The folder cannot be written, or another process searches in it.</exception>
    public static JournalFile Begin(string path, JournalHead head, bool over, Action? held = null)
    {
        CheckOurs(path);
        var stream = FolderHold.Open(path, over ? FileMode.OpenOrCreate : FileMode.CreateNew, FileAccess.ReadWrite);
        held?.Invoke();
        return BeginIn(stream, head);
    }

    /// <summary>Takes up a journal: reads its good lines, cuts off a torn tail and goes on behind them.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="head">What the search is run with now.</param>
    /// <param name="shape">How many numbers a line holds.</param>
    /// <returns>The journal with every point of its good lines.</returns>
    /// <exception cref="InputException">It was begun with other inputs or another version, each difference is named; or it is none.</exception>
    /// <exception cref="IOException">The folder cannot be written, or another process searches in it.</exception>
    public static JournalFile TakeUp(string path, JournalHead head, JournalShape shape)
    {
        CheckOurs(path);
        var stream = FolderHold.Open(path, FileMode.Open, FileAccess.ReadWrite);
        try
        {
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            var (lines, good) = GoodLines(bytes);
            // Killed before its head was whole: nothing is lost by beginning again.
            if (lines.Count < 2)
                return BeginIn(stream, head);
            var then = Head(lines[1]) ?? throw new InputException(new InputFault(path, 2, 0, lines[1], "what the search was begun with; start afresh with --force"));
            if (then.DifferencesTo(head) is { Count: > 0 } differences)
                throw new InputException([.. differences.Select(d => new InputFault(path, 2, 0, "", $"the search as it was begun, but {d}; start afresh with --force"))]);
            var journal = new JournalFile(stream);
            journal.evaluated.AddRange(ParseAll(path, lines, shape));
            stream.SetLength(good);
            stream.Position = good;
            return journal;
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    /// <summary>Refuses what lies in the place of a journal and was not written by a search.</summary>
    /// <exception cref="InputException">It is something else.</exception>
    public static void CheckOurs(string path)
    {
        if (!Path.Exists(path) && new FileInfo(path).LinkTarget is null)
            return;
        var expected = new FileInfo(path).LinkTarget is not null ? "a journal in the run's own folder, not a link" : InputFile.WhyNot(path, MostBytes);
        if (expected.Length > 0)
            throw new InputException(new InputFault(path, 0, 0, "", expected + "; move it away"));
        using var stream = FolderHold.Open(path, FileMode.Open, FileAccess.Read);
        var head = Encoding.UTF8.GetBytes(Summed(Opening));
        var there = new byte[Math.Min(head.Length, stream.Length)];
        stream.ReadExactly(there);
        if (!head.AsSpan().StartsWith(there))
            throw new InputException(new InputFault(
                path, 1, 0, Encoding.UTF8.GetString(there), $"a journal that begins with '{Opening}'; this file is none of a search, move it away"));
    }

    /// <summary>Adds evaluated points and flushes them to the disk.</summary>
    public void Append(IEnumerable<(double[] Point, Evaluation Evaluation)> points)
    {
        foreach (var (point, evaluation) in points)
        {
            evaluated.Add((point, evaluation));
            Line($"{Numbers(point)};{Numbers(evaluation.Objectives)};{Numbers(evaluation.Violations)};{Numbers([evaluation.Merit])}");
        }

        Flush();
    }

    /// <inheritdoc/>
    public void Dispose() => FileLimit.Guard(stream.Name, stream.Dispose);

    private static JournalFile BeginIn(FileStream stream, JournalHead head)
    {
        var journal = new JournalFile(stream);
        stream.SetLength(0);
        journal.Line(Opening);
        journal.Line(JsonSerializer.Serialize(head));
        journal.Flush();
        return journal;
    }

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
    private static List<(double[] Point, Evaluation Evaluation)> ParseAll(string path, List<string> lines, JournalShape shape)
    {
        var points = new List<(double[] Point, Evaluation Evaluation)>(lines.Count);
        for (var i = 2; i < lines.Count; i++)
        {
            try
            {
                var (point, evaluation) = Parse(lines[i]);
                points.Add(shape.Fits(point, evaluation) ? (point, evaluation) : throw new FormatException());
            }
            catch (Exception e) when (e is FormatException or OverflowException)
            {
                throw new InputException(new InputFault(path, i + 1, 0, lines[i], "levels; objectives; violations; merit of a layout; start afresh with --force"));
            }
        }

        return points;
    }

    private static (double[] Point, Evaluation Evaluation) Parse(string line)
    {
        var parts = line.Split(';');
        if (parts.Length != 4 || Read(parts[3]) is not [var merit])
            throw new FormatException();
        return (Read(parts[0]), new Evaluation(Read(parts[1]), Read(parts[2]), merit));
    }

    private static double[] Read(string list) => list.Length == 0 ? [] : [.. list.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

    private static string Numbers(IReadOnlyList<double> values) => string.Join(',', values.Select(v => v.ToString("R", CultureInfo.InvariantCulture)));

    private static string Sum(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 4));

    private static string Summed(string text) => $"{text} {Sum(text)}\n";

    private void Line(string text) => FileLimit.Guard(stream.Name, () => stream.Write(Encoding.UTF8.GetBytes(Summed(text))));

    private void Flush() => FileLimit.Guard(stream.Name, () => stream.Flush(flushToDisk: true));
}
