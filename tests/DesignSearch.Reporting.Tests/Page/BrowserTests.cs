using Deque.AxeCore.Playwright;
using DesignSearch.Testing;
using Microsoft.Playwright;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>The page in a real browser: Debian's Chromium, driven by Playwright, judged by axe.</summary>
public sealed class BrowserTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private const int MostSheets = 6;
    private const double MostScreens = 8;

    [SkippableTheory]
    [InlineData(false, 1400, ColorScheme.Light)]
    [InlineData(false, 360, ColorScheme.Dark)]
    [InlineData(true, 360, ColorScheme.Light)]
    public async Task Asks_for_nothing_complains_of_nothing_and_passes_axe(bool isFigures, int width, ColorScheme scheme)
    {
        var open = await browser.Open(isFigures ? browser.Figures : browser.SmallReport, width, scheme);
        await open.Page.EvaluateAsync("document.querySelectorAll('details').forEach((d, i) => d.open = i < 1)");
        var violations = (await open.Page.RunAxe()).Violations;
        Assert.True(violations.Length == 0, string.Join('\n', violations.Select(v => $"{v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.Single(open.Requests);
        Assert.Empty(open.Complaints);
    }

    [SkippableTheory]
    [InlineData(360)]
    [InlineData(700)]
    [InlineData(1400)]
    public async Task Fits_the_width_of_the_screen(int width)
    {
        var open = await browser.Open(browser.Report, width);
        await open.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
        Assert.Equal(width, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    [SkippableFact]
    public async Task Hostile_names_run_nothing_fetch_nothing_and_do_not_burst_the_page()
    {
        var open = await browser.Open(browser.HostileReport, 360);
        Assert.Single(open.Requests);
        Assert.Empty(open.Complaints);
        Assert.Equal(360, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        Assert.StartsWith("To keep 2\u00A0°C, add " + HostileRun.Texts[1], await open.Page.Locator("h1").InnerTextAsync(), StringComparison.Ordinal);
    }

    [SkippableTheory]
    [InlineData("cold")]
    [InlineData("frost")]
    public async Task The_chart_is_walked_by_keyboard_and_a_point_opens_its_layout(string reading)
    {
        var page = await AllOpen(browser.Report);
        var points = page.Locator($".{reading} .wide svg.chart a");
        await page.Locator($"#read-{reading}").CheckAsync();
        var count = await points.CountAsync();
        Assert.True(count > 5);
        Assert.Equal(1, await page.Locator($".{reading} .wide svg.chart a[tabindex='0']").CountAsync());
        await points.First.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowRight");
        var target = (await page.EvaluateAsync<string>("document.activeElement.getAttribute('href')"))[1..];
        Assert.Equal((await points.Nth(2).GetAttributeAsync("href"))![1..], target);
        Assert.Equal(await points.Nth(2).GetAttributeAsync("aria-label"), await page.Locator($".{reading} .readout").TextContentAsync());
        const string Ring = "p => getComputedStyle(p.querySelector('.ring')).stroke";
        Assert.NotEqual("none", await points.Nth(2).EvaluateAsync<string>(Ring));
        Assert.Equal("none", await points.Nth(1).EvaluateAsync<string>(Ring));
        await page.Keyboard.PressAsync("Enter");
        Assert.True(await page.EvaluateAsync<bool>($"document.getElementById('{target}').open"));
        Assert.Equal(target, await page.EvaluateAsync<string>("document.activeElement.parentElement.id"));
        Assert.True(await page.Locator($"#{target} table.bill").IsVisibleAsync());
    }

    [SkippableFact]
    public async Task A_point_opens_its_layout_by_click()
    {
        var page = await AllOpen(browser.Report);
        var point = page.Locator(".cold .wide svg.chart a").Last;
        await point.ClickAsync();
        Assert.True(await page.Locator((await point.GetAttributeAsync("href"))! + " dl").First.IsVisibleAsync());
    }

    [SkippableFact]
    public async Task Tables_sort_by_keyboard_and_by_their_full_figures()
    {
        var page = (await browser.Open(browser.Figures)).Page;
        var table = page.Locator("section[aria-labelledby=front] table");
        var cost = table.Locator("thead button").Nth(3);
        await cost.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("descending", await table.Locator("thead th").Nth(3).GetAttributeAsync("aria-sort"));
        var keys = await table.EvaluateAsync<double[]>("t => [...t.tBodies[0].rows].map(r => +r.cells[3].dataset.key)");
        Assert.Equal(keys.OrderDescending(), keys);
        Assert.True(keys.Length > 5);
    }

    [SkippableFact]
    public async Task Without_script_every_word_is_still_there()
    {
        var with = await (await browser.Open(browser.Report)).Page.Locator("body").EvaluateAsync<string>(Words);
        var without = (await browser.Open(browser.Report, script: false)).Page;
        Assert.Equal(0, await without.Locator("thead button").CountAsync());
        Assert.Equal(Squeezed(with), Squeezed(await without.Locator("body").TextContentAsync() ?? ""));
    }

    [SkippableFact]
    public async Task Printed_the_shopping_list_stands_alone_on_its_page_with_boxes_to_tick()
    {
        var page = (await browser.Open(browser.Report, scheme: ColorScheme.Dark)).Page;
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        var breaks = await page.Locator("section.shopping").EvaluateAsync<string>("s => getComputedStyle(s).breakBefore + ' ' + getComputedStyle(s).breakAfter");
        Assert.Equal("page page", breaks);
        var lines = InventedRun.Finished().Judgement is var j ? j.Ranking[j.Picks.CheapestThatHolds!.Value - 1].Bill.DistinctBy(l => l.PartId).Count() : 0;
        Assert.Equal(lines, await page.Locator("section.shopping input[type=checkbox]").CountAsync());
        Assert.False(await page.Locator("nav").IsVisibleAsync());
        Assert.Equal("rgb(255, 255, 255)", await page.Locator("body").EvaluateAsync<string>("b => getComputedStyle(b).backgroundColor"));
        var pages = await PdfPages.Of(await page.PdfAsync(new() { PreferCSSPageSize = true, Format = "A4" }));
        var headings = await page.Locator("h2:visible").AllInnerTextsAsync();
        var listed = pages.Where(p => p.Contains("Shopping list", StringComparison.Ordinal) || p.Contains("price a unit", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(listed);
        Assert.DoesNotContain(headings, h => h != "Shopping list" && listed.Any(p => p.Contains(h, StringComparison.Ordinal)));
    }

    [SkippableTheory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task The_finished_sample_prints_its_list_on_sheets_of_its_own_and_repeats_the_heads_of_long_tables(string sheet)
    {
        var page = await AllOpen(Repository.At("runs", "sample-finished", "report.html"));
        var pages = await PdfPages.Of(await page.PdfAsync(new() { PreferCSSPageSize = true, Format = sheet }));
        // To take along: it begins on a sheet, its head stands on each, and the sheet with its total holds nothing else.
        var first = Assert.Single(Enumerable.Range(0, pages.Count), i => pages[i].TrimStart().StartsWith("Shopping list", StringComparison.Ordinal));
        var last = Enumerable.Range(first, pages.Count - first).First(i => pages[i].Contains("Build price", StringComparison.Ordinal));
        Assert.InRange(last - first, 0, 1);
        Assert.All(pages.Skip(first).Take(last - first + 1), p => Assert.Matches(@"got it\s+part\s+to buy", p));
        Assert.Matches(@"Build price.*\s*$", pages[last]);
        // The same by what each part is for, likewise, on the sheets behind it.
        Assert.StartsWith("What each part is for", pages[last + 1].TrimStart(), StringComparison.Ordinal);
        var end = Enumerable.Range(last + 1, pages.Count - last - 1).First(i => pages[i].Contains("Build price", StringComparison.Ordinal));
        Assert.All(pages.Skip(last + 1).Take(end - last), p => Assert.Matches(@"part\s+how much\s+its share", p));
        Assert.Matches(@"Build price.*\s*$", pages[end]);
        // Nothing that only works on a screen, and no word broken in a narrow column.
        Assert.DoesNotContain(pages, p => p.Contains("arrow keys", StringComparison.Ordinal) || p.Contains("Choose a point", StringComparison.Ordinal));
        Assert.Contains(pages, p => System.Text.RegularExpressions.Regex.IsMatch(p, @"(?m)^\s*without\b"));
    }

    // The front runs over a sheet: the head with its sort buttons stands on each.
    [SkippableFact]
    public async Task The_figures_of_the_finished_sample_print_with_the_heads_of_long_tables_repeated()
    {
        var page = (await browser.Open(Repository.At("runs", "sample-finished", "figures.html"))).Page;
        var pages = await PdfPages.Of(await page.PdfAsync(new() { PreferCSSPageSize = true, Format = "A4" }));
        Assert.InRange(pages.Count(p => System.Text.RegularExpressions.Regex.IsMatch(p, @"turning\s+holds")), 2, 4);
    }

    [SkippableFact]
    public async Task One_reading_of_the_chart_is_shown_at_a_time_without_any_script()
    {
        var page = (await browser.Open(browser.Report, script: false)).Page;
        await page.Locator("summary", new() { HasText = "Why not cheaper" }).ClickAsync();
        Assert.True(await page.Locator("figure.cold").IsVisibleAsync());
        Assert.False(await page.Locator("figure.frost").IsVisibleAsync());
        await page.Locator("label[for=read-frost]").ClickAsync();
        Assert.False(await page.Locator("figure.cold").IsVisibleAsync());
        Assert.True(await page.Locator("figure.frost").IsVisibleAsync());
    }

    // By default the sheets to build from are printed, and nothing that is folded away.
    [SkippableFact]
    public async Task Unless_all_is_opened_the_sample_prints_on_few_sheets_and_fills_few_screens()
    {
        var page = (await browser.Open(Repository.At("runs", "sample-finished", "report.html"))).Page;
        var pages = await PdfPages.Of(await page.PdfAsync(new() { PreferCSSPageSize = true, Format = "A4" }));
        Assert.InRange(pages.Count, 4, MostSheets);
        Assert.DoesNotContain(pages, p => p.Contains("Cost against frost", StringComparison.Ordinal) || p.Contains("What each part is for", StringComparison.Ordinal));
        await page.SetViewportSizeAsync(1400, 900);
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollHeight") / 900.0, 1, MostScreens);
    }

    [SkippableFact]
    public async Task A_link_into_a_fold_opens_it()
    {
        var page = (await browser.Open(browser.Report)).Page;
        Assert.False(await page.Locator("#compare").IsVisibleAsync());
        await page.Locator("nav a[href='#compare']").ClickAsync();
        Assert.True(await page.Locator("#compare").IsVisibleAsync());
        Assert.True(await page.Locator("#week").IsHiddenAsync());
    }

    [SkippableFact]
    public async Task Ticks_survive_a_reload()
    {
        var page = (await browser.Open(browser.Report)).Page;
        var boxes = page.Locator("section.shopping input[type=checkbox]");
        await boxes.Nth(1).CheckAsync();
        await page.ReloadAsync();
        Assert.True(await boxes.Nth(1).IsCheckedAsync());
        Assert.False(await boxes.Nth(0).IsCheckedAsync());
        await boxes.Nth(1).UncheckAsync();
        await page.ReloadAsync();
        Assert.False(await boxes.Nth(1).IsCheckedAsync());
    }

    private async Task<IPage> AllOpen(string file)
    {
        var page = (await browser.Open(file)).Page;
        await page.Locator("#all").ClickAsync();
        return page;
    }

    // Scripts and styles are not words; the document's own script is left out on both sides.
    private const string Words = "b => b.textContent";

    private static string Squeezed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
