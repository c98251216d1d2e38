using System.Globalization;
using System.Text;
using DesignSearch.Climate.Tests;

namespace DesignSearch.Cli.Tests;

/// <summary>What a service may say in place of weather, by name; beside it what it rightly says.</summary>
internal static class WrongAnswers
{
    private const string Sea = """{"message":"Location over the sea. Please, select another location","status":400}""";
    private static readonly MadeSky Sky = new();
    private static readonly Lazy<string> Year = new(() => Sky.PvgisTypical(means: true, 0));

    /// <summary>A typical year as the service sends it; the place is 44.2 south, 169.8 east.</summary>
    public static string Typical => Year.Value;

    /// <summary>Gives one of them.</summary>
    /// <param name="fault">Its name.</param>
    /// <param name="stream">To the one who asked.</param>
    public static Task Give(string fault, Stream stream)
    {
        Task Say(string status, string body, params string[] heads) => StandIn.Send(stream, status, Encoding.UTF8.GetBytes(body), heads);
        var half = Typical[..(Typical.Length / 2)];
        var big = string.Create(CultureInfo.InvariantCulture, $"Content-Length: {200_000_000}");
        return fault switch
        {
            "an answer that never begins" => Task.Delay(TimeSpan.FromSeconds(8)),
            "500" => Say("500 Internal Server Error", """{"message":"Internal Server Error","status":500}"""),
            "503 and a web page" => Say("503 Service Unavailable", "<html><body>busy</body></html>"),
            "429" => Say("429 Too Many Requests", ""),
            "529" => Say("529 Site Is Overloaded", ""),
            "404" => Say("404 Not Found", "<html></html>"),
            "405" => Say("405 Method Not Allowed", ""),
            "400 over the sea" => Say("400 Bad Request", Sea),
            "400 without a word" => Say("400 Bad Request", "<html></html>"),
            "400 with a message of control signs" => Say("400 Bad Request", """{"message":"\u001b[31mred","status":400}"""),
            "half a file" => Pieces(stream, [half], whole: false),
            "half a file told as a whole" => Say("200 OK", half),
            "half the rows" => Say("200 OK", half[..(half.LastIndexOf('\n') + 1)]),
            "a length that is too long" => Say("200 OK", half, string.Create(CultureInfo.InvariantCulture, $"Content-Length: {Typical.Length}")),
            "a length that is too short" => Say("200 OK", Typical, string.Create(CultureInfo.InvariantCulture, $"Content-Length: {half.Length}")),
            "a broken piece" => Say("200 OK", "no number\r\n", "Transfer-Encoding: chunked"),
            "another place" => Say("200 OK", new MadeSky(latitude: 44.2).PvgisTypical(means: true, 0)),
            "another longitude" => Say("200 OK", new MadeSky(longitude: 155).PvgisTypical(means: true, 0)),
            "a web page" => Say("200 OK", "\n <!DOCTYPE html><html><body>Log in</body></html>"),
            "an empty answer" => Say("200 OK", ""),
            "nothing but line ends" => Say("200 OK", "\r\n\r\n"),
            "a message with code 200" => Say("200 OK", """{"message":"Internal Server Error","status":500}"""),
            "JSON" => Say("200 OK", """[1, 2"""),
            "another table" => Say("200 OK", "Date,Temp\n2021-01-01 00:00,3\n"),
            "a head without rows" => Say("200 OK", Typical[..(Typical.IndexOf("SP\r\n", StringComparison.Ordinal) + 4)]),
            "signs that are no text" => StandIn.Send(stream, "200 OK", [0, 255, 254, 1, 2, 3, 0, 0, 128]),
            "years for a typical year" => Say("200 OK", Sky.PvgisHourly()),
            "a tilted plane" => Say("200 OK", Sky.PvgisHourly(slope: 35)),
            "200 MB that are told" => Say("200 OK", "", big),
            "200 MB that are not told" => Pieces(stream, Enumerable.Repeat(new string('1', 1_000_000), 200), whole: true),
            "another host" => Say("302 Found", "", "Location: https://elsewhere.invalid/api/v5_3/tmy"),
            "http" => Say("302 Found", "", "Location: http://localhost/api/v5_3/tmy"),
            "another port" => Say("302 Found", "", "Location: https://localhost:1/api/v5_3/tmy"),
            "round and round" => Say("307 Temporary Redirect", "", "Location: tmy"),
            "a way on to nowhere" => Say("302 Found", ""),
            "a trickle" => Trickle(stream),
            "no web service" => stream.WriteAsync("220 mail.invalid ready\r\n"u8.ToArray()).AsTask(),
            "a hang-up" => Task.CompletedTask,
            _ => throw new ArgumentException(fault),
        };
    }

    // In pieces of which each tells its own length; the last of them, which says that it was all, may be missing.
    private static async Task Pieces(Stream stream, IEnumerable<string> pieces, bool whole)
    {
        await stream.WriteAsync("HTTP/1.1 200 OK\r\nConnection: close\r\nTransfer-Encoding: chunked\r\n\r\n"u8.ToArray());
        foreach (var piece in pieces)
            await stream.WriteAsync(Encoding.UTF8.GetBytes($"{Encoding.UTF8.GetByteCount(piece):x}\r\n{piece}\r\n"));
        if (whole)
            await stream.WriteAsync("0\r\n\r\n"u8.ToArray());
    }

    private static async Task Trickle(Stream stream)
    {
        await stream.WriteAsync("HTTP/1.1 200 OK\r\nContent-Length: 600000\r\n\r\n"u8.ToArray());
        for (var i = 0; i < 80; i++)
        {
            await stream.WriteAsync("1"u8.ToArray());
            await stream.FlushAsync();
            await Task.Delay(100);
        }
    }
}
