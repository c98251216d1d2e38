using System.Net;
using System.Net.Security;
using System.Security.Cryptography.X509Certificates;
using System.Text.Json;
using DesignSearch.Climate.Weather;
using DesignSearch.Files;

namespace DesignSearch.Cli.Download;

/// <summary>
/// PVGIS, the public weather service of the European Commission's Joint Research Centre, asked by its documented interface for programs
/// (version 5.3: tools <c>tmy</c> and <c>seriescalc</c>, GET, CSV; faults as JSON with a message). By https only; never sent on to another
/// host. Written from the documentation and tried against a stand-in, not against the service.
/// </summary>
public sealed class PvgisService : IDisposable
{
    private const int MostHops = 3;
    private const int MostOfMessage = 64_000;
    private const int LongestMessage = 200;
    private readonly Uri address;
    private readonly DownloadLimits limits;
    private readonly HttpClient client;

    /// <summary>Prepares to ask; nothing is asked before <see cref="Fetch"/>.</summary>
    /// <param name="address">Where the tools are, by https, ending in a slash.</param>
    /// <param name="limits">What is borne before it is given up.</param>
    /// <param name="trusted">Whose certificates count in place of the usual ones; none: the usual ones.</param>
    /// <exception cref="ArgumentException">The address is not by https.</exception>
    public PvgisService(Uri address, DownloadLimits limits, X509Certificate2Collection? trusted = null)
    {
        ArgumentNullException.ThrowIfNull(address);
        if (address.Scheme != Uri.UriSchemeHttps)
            throw new ArgumentException("Weather is asked for by https only.", nameof(address));
        (this.address, this.limits) = (address, limits);
        var handler = new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false, UseProxy = !address.IsLoopback, ConnectTimeout = limits.Answer };
        if (trusted is not null)
        {
            var policy = new X509ChainPolicy { TrustMode = X509ChainTrustMode.CustomRootTrust, RevocationMode = X509RevocationMode.NoCheck };
            policy.CustomTrustStore.AddRange(trusted);
            handler.SslOptions = new SslClientAuthenticationOptions { CertificateChainPolicy = policy };
        }

        client = new HttpClient(handler) { Timeout = Timeout.InfiniteTimeSpan };
        client.DefaultRequestHeaders.UserAgent.ParseAdd("designsearch/" + typeof(PvgisService).Assembly.GetName().Version?.ToString(3));
    }

    /// <summary>Name of the machine that is asked.</summary>
    public string Host => address.Host;

    /// <summary>The service itself.</summary>
    public static PvgisService Real() => new(new Uri("https://re.jrc.ec.europa.eu/api/v5_3/"), DownloadLimits.Usual);

    /// <summary>Asks, a second time where that may help, and looks whether what came is what was asked for.</summary>
    /// <param name="query">What to ask for.</param>
    /// <param name="name">Name that the weather goes by, without folder.</param>
    /// <param name="again">Told why a second attempt is made.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>What came, as it came, and how it reads.</returns>
    /// <exception cref="DownloadException">Nothing of use came.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public async Task<(byte[] Bytes, WeatherRecord Record)> Fetch(PvgisQuery query, string name, Action<string> again, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(query);
        ArgumentNullException.ThrowIfNull(again);
        using var whole = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        whole.CancelAfter(limits.Whole);
        try
        {
            return await Attempt();
        }
        catch (DownloadException e) when (e.MayPass && !whole.IsCancellationRequested)
        {
            again(PvgisWords.Again(e.Message));
            await Paused();
            return await Attempt();
        }

        async Task<(byte[] Bytes, WeatherRecord Record)> Attempt()
        {
            var bytes = await Guarded(query, whole.Token, cancel);
            return (bytes, PvgisAnswer.Read(bytes, query, Host, name));
        }

        async Task Paused()
        {
            try
            {
                await Task.Delay(limits.Pause, whole.Token);
            }
            catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
            {
                throw new DownloadException(PvgisWords.Slow(Host, limits.Whole));
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => client.Dispose();

    private async Task<byte[]> Guarded(PvgisQuery query, CancellationToken whole, CancellationToken cancel)
    {
        using var first = CancellationTokenSource.CreateLinkedTokenSource(whole);
        first.CancelAfter(limits.Answer);
        try
        {
            using var response = await Ask(new Uri(address, query.Target), first.Token);
            if (response.StatusCode != HttpStatusCode.OK)
                throw await Refusal(response, whole);
            return await Body(response, limits.Bytes, whole) ?? throw new DownloadException(PvgisWords.Large(Host, limits.Bytes));
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
        {
            throw whole.IsCancellationRequested ? new(PvgisWords.Slow(Host, limits.Whole)) : new DownloadException(PvgisWords.Late(Host, limits.Answer), mayPass: true);
        }
        catch (HttpRequestException e)
        {
            throw Failure(e.HttpRequestError);
        }
        catch (IOException e)
        {
            throw Failure((e as HttpIOException)?.HttpRequestError ?? HttpRequestError.ResponseEnded);
        }
    }

    // A way on within the same host is gone, any other is refused.
    private async Task<HttpResponseMessage> Ask(Uri target, CancellationToken cancel)
    {
        for (var hop = 0; hop < MostHops; hop++)
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, target);
            var response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cancel);
            if ((int)response.StatusCode / 100 != 3 || response.Headers.Location is not { } location)
                return response;
            response.Dispose();
            target = new Uri(target, location);
            if (target.Scheme != address.Scheme || target.Authority != address.Authority)
                throw new DownloadException(PvgisWords.Elsewhere(Host, Short(target.GetLeftPart(UriPartial.Authority))));
        }

        throw new DownloadException(PvgisWords.Circle(Host));
    }

    private async Task<DownloadException> Refusal(HttpResponseMessage response, CancellationToken cancel)
    {
        var status = (int)response.StatusCode;
        if (status is 404 or 405 or 410 || status / 100 == 3)
            return new(PvgisWords.Moved(Host, status));
        if (status is 408 or 429 || status / 100 != 4)
            return new(PvgisWords.Busy(Host, status), mayPass: true);
        return new(PvgisWords.Refused(Host, status, Message(await Body(response, MostOfMessage, cancel) ?? [])));
    }

    private DownloadException Failure(HttpRequestError error) => error switch
    {
        HttpRequestError.NameResolutionError => new(PvgisWords.NoName(Host), mayPass: true),
        HttpRequestError.SecureConnectionError => new(PvgisWords.NoTrust(Host)),
        HttpRequestError.ProxyTunnelError => new(PvgisWords.NoProxy(Host)),
        HttpRequestError.ConnectionError or HttpRequestError.Unknown => new(PvgisWords.NoWay(Host), mayPass: true),
        HttpRequestError.ResponseEnded => new(PvgisWords.Broken(Host), mayPass: true),
        _ => new(PvgisWords.NoSense(Host)),
    };

    /// <summary>The message of a fault as the service writes it; empty where there is none.</summary>
    internal static string Message(byte[] body)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return document.RootElement.ValueKind == JsonValueKind.Object && document.RootElement.TryGetProperty("message", out var message)
                && message.ValueKind == JsonValueKind.String
                ? Short(message.GetString()!)
                : "";
        }
        catch (JsonException)
        {
            return "";
        }
    }

    private static string Short(string text)
    {
        var line = VisibleText.Of(string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        return line.Length <= LongestMessage ? line : line[..LongestMessage] + "…";
    }

    private static async Task<byte[]?> Body(HttpResponseMessage response, long most, CancellationToken cancel)
    {
        if (response.Content.Headers.ContentLength > most)
            return null;
        await using var source = await response.Content.ReadAsStreamAsync(cancel);
        using var held = new MemoryStream();
        var block = new byte[1 << 16];
        for (int read; (read = await source.ReadAsync(block, cancel)) > 0;)
        {
            held.Write(block, 0, read);
            if (held.Length > most)
                return null;
        }

        return held.ToArray();
    }
}
