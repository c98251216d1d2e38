using Microsoft.Playwright;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>Debian's Chromium, started once, and the invented run's files to open in it.</summary>
public sealed class BrowserFixture : IAsyncLifetime, IDisposable
{
    private const string Chromium = "/usr/bin/chromium";

    private readonly ScratchFolder folder = new();
    private readonly ScratchFolder small = new();
    private readonly ScratchFolder hostile = new();
    private IPlaywright? playwright;
    private IBrowser? browser;

    public string Report => folder.At("report.html");

    public string Figures => folder.At("figures.html");

    /// <summary>Fewer layouts, for axe, which looks at every word on the page.</summary>
    public string SmallReport => small.At("report.html");

    public string HostileReport => hostile.At("report.html");

    public async Task InitializeAsync()
    {
        RunFiles.WriteAll(InventedRun.Finished(), folder.Path);
        RunFiles.WriteAll(InventedRun.Of(InventedLayouts.All().Where((_, i) => i % 7 == 1)), small.Path);
        RunFiles.WriteAll(HostileRun.Make(), hostile.Path);
        if (!File.Exists(Chromium))
            return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>Opens a page; skips the test where there is no browser, unless skipping is forbidden.</summary>
    internal async Task<OpenPage> Open(string file, int width = 1400, ColorScheme scheme = ColorScheme.Light, bool script = true)
    {
        if (browser is null && Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1")
            Assert.Fail($"{Chromium} is missing, and DESIGNSEARCH_NO_SKIP forbids to skip.");
        Skip.If(browser is null, $"{Chromium} is not installed.");
        var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 800 }, ColorScheme = scheme, JavaScriptEnabled = script, Offline = true });
        var page = await context.NewPageAsync();
        var open = new OpenPage(page);
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        return open;
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
    }

    public void Dispose()
    {
        playwright?.Dispose();
        folder.Dispose();
        small.Dispose();
        hostile.Dispose();
    }
}
