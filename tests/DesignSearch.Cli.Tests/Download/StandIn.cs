using System.Globalization;
using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using DesignSearch.Cli.Download;

namespace DesignSearch.Cli.Tests;

/// <summary>
/// A server of our own on this machine that speaks https and says what a test wants said, faults included, byte by byte. It keeps what it
/// was asked.
/// </summary>
internal sealed class StandIn : IDisposable
{
    private static readonly Lazy<X509Certificate2> Own = new(() => Certificate("localhost"));
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource end = new();
    private readonly Func<int, Stream, Task> answer;
    private readonly X509Certificate2 shown;
    private readonly List<string> asked = [];

    /// <summary>Starts to listen.</summary>
    /// <param name="answer">Writes the answer to the n-th question, counted from 0.</param>
    /// <param name="shown">Certificate that it shows; none: its own, which is trusted.</param>
    public StandIn(Func<int, Stream, Task> answer, X509Certificate2? shown = null)
    {
        (this.answer, this.shown) = (answer, shown ?? Own.Value);
        listener.Start();
        _ = Task.Run(Serve);
    }

    /// <summary>First lines of what was asked, and the whole heads behind them.</summary>
    public IReadOnlyList<string> Asked
    {
        get
        {
            lock (asked)
                return [.. asked];
        }
    }

    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    public Uri Address => new(FormattableString.Invariant($"https://localhost:{Port}/api/v5_3/"));

    /// <summary>The service as the program makes it, but asked here.</summary>
    public PvgisService Service() => At(Address);

    /// <summary>The service asked at an address of the test's own.</summary>
    /// <param name="address">The address.</param>
    /// <param name="answerS">Patience until an answer begins [s].</param>
    /// <param name="wholeS">Patience until it ends [s].</param>
    public static PvgisService At(Uri address, double answerS = 60, double wholeS = 120) => new(
        address, DownloadLimits.Usual with { Answer = TimeSpan.FromSeconds(answerS), Whole = TimeSpan.FromSeconds(wholeS), Pause = TimeSpan.FromMilliseconds(20) }, [Own.Value]);

    /// <summary>Answers every question with a whole message.</summary>
    public static StandIn Saying(string status, string body, params string[] heads) => new((_, stream) => Send(stream, status, Encoding.UTF8.GetBytes(body), heads));

    /// <summary>One whole message; its length is told unless the heads tell one.</summary>
    public static async Task Send(Stream stream, string status, byte[] body, params string[] heads)
    {
        var length = heads.Any(h => h.StartsWith("Content-Length", StringComparison.Ordinal) || h.StartsWith("Transfer-Encoding", StringComparison.Ordinal))
            ? []
            : new[] { string.Create(CultureInfo.InvariantCulture, $"Content-Length: {body.Length}") };
        await stream.WriteAsync(Encoding.ASCII.GetBytes(string.Join("\r\n", ["HTTP/1.1 " + status, "Connection: close", .. heads, .. length]) + "\r\n\r\n"));
        await stream.WriteAsync(body);
    }

    /// <summary>A certificate that nobody vouches for but itself.</summary>
    public static X509Certificate2 Certificate(string host)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=" + host, key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName(host);
        request.CertificateExtensions.Add(names.Build());
        using var made = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(30));
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), null);
    }

    public void Dispose()
    {
        end.Cancel();
        listener.Stop();
        end.Dispose();
    }

    private async Task Serve()
    {
        while (true)
        {
            TcpClient caller;
            try
            {
                caller = await listener.AcceptTcpClientAsync(end.Token);
            }
            catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                return;
            }

            _ = Task.Run(() => Speak(caller));
        }
    }

    // A caller that hangs up in the middle is no fault of the server.
    private async Task Speak(TcpClient caller)
    {
        using (caller)
        {
            try
            {
                await using var stream = new SslStream(caller.GetStream());
                await stream.AuthenticateAsServerAsync(shown);
                var head = new StringBuilder();
                var block = new byte[4096];
                while (!head.ToString().Contains("\r\n\r\n", StringComparison.Ordinal))
                {
                    var read = await stream.ReadAsync(block);
                    if (read == 0)
                        return;
                    head.Append(Encoding.ASCII.GetString(block, 0, read));
                }

                int count;
                lock (asked)
                {
                    count = asked.Count;
                    asked.Add(head.ToString());
                }

                await answer(count, stream);
                await stream.ShutdownAsync();
            }
            catch (Exception e) when (e is IOException or System.Security.Authentication.AuthenticationException or ObjectDisposedException)
            {
            }
        }
    }
}
