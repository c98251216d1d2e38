using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using DesignSearch.Cli.Download;
using DesignSearch.Climate.Tests;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>
/// weather --at against a stand-in that speaks the service's documented answers, rightly and wrongly. What it takes for granted was written
/// from the service's documentation of its interface for programs; the service itself was not asked.
/// </summary>
public sealed class FetchTests : IDisposable
{
    private static readonly Lazy<string> TwoYears = new(() => new MadeSky().PvgisHourly().Replace("\nlegend\n", "", StringComparison.Ordinal) + Rows(new MadeSky(year: 2022).PvgisHourly()));
    private readonly string folder = Directory.CreateTempSubdirectory("designsearch-").FullName;

    public static TheoryData<string, string> Faults => new()
    {
        { "an answer that never begins", "did not answer within 1 s" },
        { "500", "has too much to do or a fault of its own (answer 500)" },
        { "503 and a web page", "(answer 503); try again later" },
        { "429", "(answer 429); try again later" },
        { "529", "(answer 529); try again later" },
        { "404", "has no such service any more (answer 404)" },
        { "405", "has no such service any more (answer 405)" },
        { "400 over the sea", "it says \"Location over the sea. Please, select another location\" (answer 400). On a coast, try a point some kilometres inland." },
        { "400 without a word", "refuses the question (answer 400) and does not say why" },
        { "400 with a message of control signs", "it says \"\uFFFD[31mred\" (answer 400)" },
        { "half a file", "broke off in the middle" },
        { "half a file told as a whole", "cannot be read as weather; expected at least 8 fields; the row has" },
        { "half the rows", "cannot be read as weather; expected no gap longer than 48 h" },
        { "a length that is too long", "broke off in the middle" },
        { "a length that is too short", "cannot be read as weather; expected" },
        { "a broken piece", "answers, but not as a web service does" },
        { "another place", "sent the weather of 44.2, 169.8, not of -44.2, 169.8" },
        { "another longitude", "sent the weather of -44.2, 155, not of -44.2, 169.8" },
        { "a web page", "answers with a web page, not with weather" },
        { "an empty answer", "is empty; try again later" },
        { "nothing but line ends", "is empty; try again later" },
        { "a message with code 200", "answers with a message, not with weather: \"Internal Server Error\"" },
        { "JSON", "something else than a table of weather" },
        { "another table", "something else than a table of weather" },
        { "a head without rows", "cannot be read as weather; expected" },
        { "signs that are no text", "something else than a table of weather" },
        { "years for a typical year", "hours of 2021, not a whole typical year" },
        { "a tilted plane", "cannot be read as weather; expected slope 0" },
        { "200 MB that are told", "sends more than 60 MB" },
        { "200 MB that are not told", "sends more than 60 MB" },
        { "another host", "sends on to https://elsewhere.invalid; only localhost is asked" },
        { "http", "and only by https, so it was not followed" },
        { "another port", "only localhost is asked, and only by https" },
        { "round and round", "sends on again and again" },
        { "a way on to nowhere", "has no such service any more (answer 302)" },
        { "a trickle", "had not sent all of its answer after 3 s" },
        { "no web service", "answers, but not as a web service does" },
        { "a hang-up", "broke off in the middle" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_ends_in_one_plain_sentence_and_no_file(string fault, string sentence)
    {
        using var server = new StandIn((_, stream) => WrongAnswers.Give(fault, stream));
        Refused(Fetch(() => StandIn.At(server.Address, fault == "an answer that never begins" ? 1 : 60, fault == "a trickle" ? 3 : 120), "--quiet"), sentence);
        // Where nothing at all comes back, the runtime asks up to three times more within an attempt.
        Assert.InRange(server.Asked.Count, 1, fault == "a hang-up" ? 8 : 3);
    }

    [Fact]
    public void A_host_that_is_not_known_is_told() =>
        Refused(Fetch(() => StandIn.At(new("https://no-such-host.invalid/api/")), "--quiet"), "no-such-host.invalid is not known to this machine's network");

    [Fact]
    public void A_refused_connection_is_told()
    {
        using var closed = new TcpListener(IPAddress.Loopback, 0);
        closed.Start();
        var port = ((IPEndPoint)closed.LocalEndpoint).Port;
        closed.Stop();
        Refused(Fetch(() => StandIn.At(new($"https://localhost:{port}/")), "--quiet"), "localhost cannot be reached");
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("other.invalid")]
    public void A_certificate_that_nobody_vouches_for_is_refused(string name)
    {
        using var certificate = StandIn.Certificate(name);
        using var server = new StandIn((_, stream) => StandIn.Send(stream, "200 OK", Encoding.UTF8.GetBytes(WrongAnswers.Typical)), certificate);
        Refused(Fetch(server.Service, "--quiet"), "No trusted connection to localhost: its certificate is not accepted");
        Assert.Empty(server.Asked);
    }

    [Fact]
    public void Only_https_is_spoken() =>
        Assert.Throws<ArgumentException>(() => new PvgisService(new("http://re.jrc.ec.europa.eu/api/v5_3/"), DownloadLimits.Usual));

    [Fact]
    public void The_typical_year_is_saved_as_it_came_and_reads()
    {
        using var server = StandIn.Saying("200 OK", WrongAnswers.Typical, "Content-Type: text/csv");
        var (code, output, error) = Fetch(server.Service);
        Assert.Equal((ExitCode.Done, "Asking PVGIS (localhost) for weather; it takes up to some minutes …\n"), (code, error));
        Assert.Equal(WrongAnswers.Typical, File.ReadAllText(Target));
        var asked = Assert.Single(server.Asked);
        Assert.StartsWith("GET /api/v5_3/tmy?lat=-44.2&lon=169.8&usehorizon=0&outputformat=csv HTTP/1.1\r\n", asked, StringComparison.Ordinal);
        Assert.Contains("designsearch/", asked, StringComparison.Ordinal);
        Assert.DoesNotContain("Cookie", asked, StringComparison.Ordinal);
        Assert.Contains("European Commission", output, StringComparison.Ordinal);
        Assert.Contains("(c) European Union", output, StringComparison.Ordinal);
        Assert.Contains("Copernicus", output, StringComparison.Ordinal);
        Assert.Contains("weather_file = \"w.csv\"", output, StringComparison.Ordinal);
        // What it says of the weather is what the reader says of the file.
        var (read, said, _) = Cli.Run("weather", Target);
        Assert.Equal(ExitCode.Done, read);
        Assert.StartsWith(said, output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hours_of_years_are_asked_for_on_the_level()
    {
        using var server = StandIn.Saying("200 OK", TwoYears.Value);
        var (code, output, error) = Fetch(server.Service, "--years", "2021-2022", "--json", "--quiet");
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.StartsWith(
            "GET /api/v5_3/seriescalc?lat=-44.2&lon=169.8&startyear=2021&endyear=2022&components=1&angle=0&aspect=0&usehorizon=0&outputformat=csv HTTP/1.1\r\n",
            Assert.Single(server.Asked), StringComparison.Ordinal);
        Assert.Equal("2021 to 2022", JsonDocument.Parse(output).RootElement.GetProperty("period").GetString());
        Assert.Equal(TwoYears.Value, File.ReadAllText(Target));
    }

    [Theory]
    [InlineData("2020-2022")]
    [InlineData("2021")]
    public void Other_years_than_were_asked_for_are_refused(string years)
    {
        using var server = StandIn.Saying("200 OK", TwoYears.Value);
        Refused(Fetch(server.Service, "--years", years, "--quiet"), "hours of 2021 to 2022, not all hours of");
    }

    [Fact]
    public void Years_that_break_off_are_refused()
    {
        using var server = StandIn.Saying("200 OK", TwoYears.Value[..(TwoYears.Value.LastIndexOf("\n202210", StringComparison.Ordinal) + 1)]);
        Refused(Fetch(server.Service, "--years", "2021-2022", "--quiet"), "not all hours of 2021 to 2022");
    }

    [Fact]
    public void A_second_attempt_is_made_once_and_told()
    {
        using var server = new StandIn((count, stream) => count == 0 ? WrongAnswers.Give("503 and a web page", stream) : StandIn.Send(stream, "200 OK", Encoding.UTF8.GetBytes(WrongAnswers.Typical)));
        var (code, _, error) = Fetch(server.Service);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Trying once more.", error, StringComparison.Ordinal);
        Assert.Equal(2, server.Asked.Count);
        File.Delete(Target);
        using var busy = new StandIn((_, stream) => WrongAnswers.Give("429", stream));
        Fetch(busy.Service, "--quiet");
        Assert.Equal(2, busy.Asked.Count);
        using var sea = new StandIn((_, stream) => WrongAnswers.Give("400 over the sea", stream));
        Fetch(sea.Service, "--quiet");
        Assert.Single(sea.Asked);
    }

    [Fact]
    public void What_has_begun_may_take_longer_than_its_beginning_may()
    {
        using var server = new StandIn(async (_, stream) =>
        {
            var bytes = Encoding.UTF8.GetBytes(WrongAnswers.Typical);
            await StandIn.Send(stream, "200 OK", bytes[..1000], string.Create(CultureInfo.InvariantCulture, $"Content-Length: {bytes.Length}"));
            await Task.Delay(TimeSpan.FromSeconds(5));
            await stream.WriteAsync(bytes.AsMemory(1000));
        });
        var (code, _, error) = Fetch(() => StandIn.At(server.Address, answerS: 4), "--quiet");
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Single(server.Asked);
    }

    [Fact]
    public void A_way_on_within_the_host_is_gone()
    {
        using var server = new StandIn((count, stream) => count == 0
            ? StandIn.Send(stream, "301 Moved Permanently", [], "Location: /api/v5_3/tmy/?lat=-44.2")
            : StandIn.Send(stream, "200 OK", Encoding.UTF8.GetBytes(WrongAnswers.Typical)));
        Assert.Equal(ExitCode.Done, Fetch(server.Service).Code);
        Assert.StartsWith("GET /api/v5_3/tmy/?lat=-44.2 ", server.Asked[1], StringComparison.Ordinal);
    }

    [Fact]
    public void What_lies_there_is_left_alone_and_nothing_is_asked()
    {
        using var server = StandIn.Saying("200 OK", WrongAnswers.Typical);
        File.WriteAllText(Target, "mine");
        foreach (var path in new[] { Target, folder, folder + Path.DirectorySeparatorChar })
        {
            var (code, output, error) = Cli.RunAsking(server.Service, "weather", "--at", "-44.2,169.8", "--save", path, "--quiet");
            Assert.Equal((ExitCode.BadInput, ""), (code, output));
            Assert.StartsWith("--save: found '", error, StringComparison.Ordinal);
        }

        Assert.Equal("mine", File.ReadAllText(Target));
        Assert.Empty(server.Asked);
    }

    [Fact]
    public void A_file_that_cannot_be_written_ends_in_four()
    {
        using var server = StandIn.Saying("200 OK", WrongAnswers.Typical);
        File.WriteAllText(Target, "a file is no folder");
        var (code, _, error) = Cli.RunAsking(server.Service, "weather", "--at", "-44.2,169.8", "--save", Path.Combine(Target, "w.csv"), "--quiet");
        Assert.Equal(ExitCode.CannotWrite, code);
        Assert.StartsWith("Cannot write: ", error, StringComparison.Ordinal);
        Assert.Equal([Target], Directory.EnumerateFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "90.1,10")]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "46.3,-180.5")]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "46,3,13,9")]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "46.3N,13.9E")]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "NaN,13.9")]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "46.3")]
    [InlineData("--at takes LATITUDE,LONGITUDE", "--at", "Oslo")]
    [InlineData("did you mean 2005-2023?", "--at", "46.3,13.9", "--years", "2023-2005")]
    [InlineData("--years takes years from 2005 to 2023", "--at", "46.3,13.9", "--years", "2004-2010")]
    [InlineData("--years takes years from 2005 to 2023", "--at", "46.3,13.9", "--years", "2023-2024")]
    [InlineData("--years takes a year or FIRST-LAST", "--at", "46.3,13.9", "--years", "5-23")]
    [InlineData("--years takes a year or FIRST-LAST", "--at", "46.3,13.9", "--years", "2005-2010-2015")]
    [InlineData("--years takes a year or FIRST-LAST", "--at", "46.3,13.9", "--years", "2005–2023")]
    [InlineData("--years goes with --at", "--near", "Redmond", "--years", "2005-2023")]
    [InlineData("--at and --near do not go together", "--at", "46.3,13.9", "--near", "Redmond")]
    [InlineData("FILE and --at do not go together", "a.csv", "--at", "46.3,13.9")]
    [InlineData("--for goes with FILE", "--at", "46.3,13.9", "--for", "runs/x")]
    [InlineData("--picture goes with FILE", "--at", "46.3,13.9", "--picture", "x.png")]
    [InlineData("--height goes with --near", "--at", "46.3,13.9", "--height", "10")]
    public void Words_that_do_not_fit_are_refused_before_anything_is_asked(string sentence, params string[] words)
    {
        using var server = StandIn.Saying("200 OK", WrongAnswers.Typical);
        var (code, output, error) = Cli.RunAsking(server.Service, ["weather", .. words, "--save", Target]);
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains(sentence, error, StringComparison.Ordinal);
        Assert.Empty(server.Asked);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void Every_slip_of_a_command_line_is_told_at_once()
    {
        var error = Cli.Run("weather", "--at", "95,2", "--years", "2030-2001", "--for", "x").Error;
        Assert.All(
            new[] { "--at takes", "--years takes", "--for goes with", "--at needs --save" },
            part => Assert.Contains(part, error, StringComparison.Ordinal));
        Assert.Contains("--save goes with", Cli.Run("weather", "a.csv", "--save", "b").Error, StringComparison.Ordinal);
        Assert.Contains("weather takes a FILE", Cli.Run("weather").Error, StringComparison.Ordinal);
    }

    // No other command, and no other word of this one, makes the service.
    [Fact]
    public void Nothing_is_asked_without_being_told_to()
    {
        File.WriteAllText(Target, WrongAnswers.Typical);
        static PvgisService Never() => throw new InvalidOperationException("The network was asked.");
        Assert.Equal(ExitCode.Done, Cli.RunAsking(Never, "weather", Target).Code);
        Assert.Equal(ExitCode.Done, Cli.RunAsking(Never, "weather", "--near", "44.25,-121.17").Code);
        Assert.Equal(ExitCode.Done, Cli.RunAsking(Never, "--help").Code);
    }

    [Fact]
    public void A_wait_can_be_ended()
    {
        using var server = new StandIn((_, stream) => WrongAnswers.Give("an answer that never begins", stream));
        using var service = server.Service();
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
        Assert.ThrowsAny<OperationCanceledException>(() => service.Fetch(new(-44.2, 169.8, null), "w.csv", _ => { }, stop.Token).GetAwaiter().GetResult());
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Target => Path.Combine(folder, "w.csv");

    private (int Code, string Output, string Error) Fetch(Func<PvgisService> service, params string[] more) =>
        Cli.RunAsking(service, ["weather", "--at", "-44.2,169.8", "--save", Target, .. more]);

    private void Refused((int Code, string Output, string Error) ended, string sentence)
    {
        Assert.True(ended.Error.Contains(sentence, StringComparison.Ordinal), ended.Error);
        Assert.EndsWith(" Nothing was written.\n", ended.Error, StringComparison.Ordinal);
        Assert.Equal(1, ended.Error.Count(c => c == '\n'));
        Assert.Equal((ExitCode.BadInput, ""), (ended.Code, ended.Output));
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    private static string Rows(string text) => text[(text.IndexOf("Int\n", StringComparison.Ordinal) + 4)..];
}
