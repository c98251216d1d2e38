using System.Globalization;
using System.Text;

namespace DesignSearch.Toughness.Tests;

/// <summary>Spoils a file the way disks, editors, spreadsheets and tired people do. The same seed spoils it the same way.</summary>
internal sealed class Mutator(int seed)
{
    private static readonly string[] Words =
    [
        "0", "-0", "-1", "1e308", "-1e308", "1e-320", "1e999", "nan", "inf", "-inf", "99999999999999999999", "0x1F", "1,5", "1.000,5", "1_0", "١٢", "½",
        "", " ", "\"", "'", "\"\"\"", "[", "]", "[[", "{", "}", "=", "=1+1", "#", ",", ";", "\t", "\r", "\n", "\r\n", "\\", "\\u0000", "\\uD800", "\0", "\u0007", "\u001b[2J", "\u202e", "\ufeff",
        "<script>alert(1)</script>", "../../x", "/dev/null", "CON", "none", "true", "null", "1979-05-27", "{ from = 1, to = 0, step = 0 }", "{ from = 0, to = 1e9, step = 1e-9 }", "[[], []]",
        new('[', 20), new('[', 70), new('{', 70), string.Concat(Enumerable.Repeat("{a=", 70)), string.Concat(Enumerable.Repeat("[{a=", 300)), string.Concat(Enumerable.Repeat("{\"a\":", 80)),
        "'''", "first", "99999999999", "[]", "{}", "[[]]", "[1]", "\"1\"", "0.5", "-3", @"^(\w+\s?)*$", "(a+)+$", "((((a))))", "(?<=x)(y)", @"(.)\1",
    ];

    private readonly Random random = new(seed);

    /// <summary>A spoilt copy: one to four strokes.</summary>
    public byte[] Spoil(byte[] original)
    {
        var bytes = original;
        for (var strokes = random.Next(8) == 0 ? random.Next(2, 5) : 1; strokes > 0; strokes--)
            bytes = random.Next(4) == 0 ? Bytes(bytes) : Text(bytes);
        return bytes;
    }

    private byte[] Bytes(byte[] bytes)
    {
        var list = bytes.ToList();
        var (at, many) = (random.Next(list.Count + 1), Math.Min(random.Next(1, 40), list.Count));
        switch (random.Next(7))
        {
            case 0 when list.Count > 0:
                list[Math.Min(at, list.Count - 1)] ^= (byte)(1 << random.Next(8));
                break;
            case 1:
                list.Insert(at, (byte)random.Next(256));
                break;
            case 2:
                list.RemoveRange(Math.Min(at, list.Count - many), many);
                break;
            case 3:
                list.RemoveRange(at, list.Count - at);
                break;
            case 4:
                list.InsertRange(at, list.GetRange(random.Next(list.Count - many + 1), many));
                break;
            case 5:
                return random.Next(3) switch { 0 => Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(bytes))).ToArray(), 1 => Encoding.Latin1.GetBytes(Encoding.UTF8.GetString(bytes)), _ => [0xEF, 0xBB, 0xBF, .. bytes] };
            default:
                for (var i = at; i < Math.Min(list.Count, at + many); i++)
                    list[i] = (byte)random.Next(256);
                break;
        }

        return [.. list];
    }

    private byte[] Text(byte[] bytes)
    {
        var lines = Encoding.UTF8.GetString(bytes).Split('\n').ToList();
        var at = random.Next(lines.Count);
        switch (random.Next(12))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, lines[random.Next(lines.Count)]);
                break;
            case 2:
                (lines[at], lines[^1]) = (lines[^1], lines[at]);
                break;
            case 3:
                lines[at] += Word();
                break;
            case 4:
                lines.Insert(random.Next(lines.Count + 1), Word());
                break;
            case 5:
                lines[at] = new string(random.Next(2) == 0 ? '[' : 'w', random.Next(2) == 0 ? 300 : 10_000) + lines[at];
                break;
            case 6:
                lines[at] = lines[at].Replace(',', ';').Replace('.', ',');
                break;
            default:
                lines[at] = Token(lines[at]);
                break;
        }

        return Encoding.UTF8.GetBytes(string.Join('\n', lines));
    }

    // Most slips are in one word or number: put another in its place, one from a list or the number moved by powers of ten.
    private string Token(string line)
    {
        var places = Enumerable.Range(0, line.Length).Where(i => IsWord(line[i]) && (i == 0 || !IsWord(line[i - 1]))).ToList();
        if (places.Count == 0)
            return line + Word();
        var from = places[random.Next(places.Count)];
        var to = from;
        while (to < line.Length && IsWord(line[to]))
            to++;
        var word = line[from..to];
        var other = random.Next(3) switch
        {
            0 when double.TryParse(word, CultureInfo.InvariantCulture, out var number) => (number * Math.Pow(10, random.Next(-6, 7)) * (random.Next(3) - 1)).ToString("R", CultureInfo.InvariantCulture),
            1 => word.Length > 1 ? word.Remove(random.Next(word.Length), 1) : "",
            _ => Word(),
        };
        return line[..from] + other + line[to..];
    }

    private string Word() => Words[random.Next(Words.Length)];

    private static bool IsWord(char c) => char.IsLetterOrDigit(c) || c is '.' or '-' or '_';
}
