using DesignSearch.Reporting.Tables;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class RunFilesTests
{
    [Fact]
    public void Everything_that_is_promised_is_written_and_nothing_else()
    {
        using var folder = new ScratchFolder();
        var run = InventedRun.Finished();
        RunFiles.WriteAll(run, folder.Path);
        string[] expected = ["figures.html", "front.csv", "ranking.csv", "pareto.png", "pareto.svg", "report.html", "written.txt", "lists.xlsx", .. run.Judgement.Ranking.Select(l => $"lists/{l.Rank}-{l.Slug}.csv"),
            .. run.Judgement.Ranking.Where(l => l.Wires.Count > 0).Select(l => $"lists/{l.Rank}-{l.Slug}-wiring.csv"),
            .. run.Judgement.Ranking.SelectMany(l => PapersTables.Of(l, "").Select(p => $"lists/{l.Rank}-{l.Slug}-{p.Paper}.csv"))];
        Assert.Equal(expected.Order(StringComparer.Ordinal), folder.Files());
    }

    [Fact]
    public void The_same_run_gives_the_same_bytes()
    {
        using var one = new ScratchFolder();
        using var two = new ScratchFolder();
        RunFiles.WriteAll(InventedRun.Finished(), one.Path);
        RunFiles.WriteAll(InventedRun.Finished(), two.Path);
        foreach (var file in one.Files())
            Assert.Equal(File.ReadAllBytes(one.At(file)), File.ReadAllBytes(two.At(file)));
    }

    [Fact]
    public void Lists_of_an_earlier_search_go_and_the_builders_own_files_stay()
    {
        using var folder = new ScratchFolder();
        RunFiles.WriteAll(InventedRun.Finished(), folder.Path);
        var earlier = folder.Files();
        Directory.CreateDirectory(folder.At("lists"));
        string[] own = ["77-my-layout.csv", "my-own.csv", "77-my-layout.toml"];
        foreach (var name in own)
            File.WriteAllText(folder.At("lists", name), "x");
        RunFiles.WriteAll(InventedRun.Of([]), folder.Path);
        Assert.Contains(earlier, f => f.StartsWith("lists/1-", StringComparison.Ordinal));
        Assert.Equal(own.Order(StringComparer.Ordinal).Select(n => "lists/" + n), folder.Files().Where(f => f.StartsWith("lists/", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_run_that_contradicts_itself_writes_nothing()
    {
        using var folder = new ScratchFolder();
        var run = InventedRun.Finished();
        var broken = run.Judgement.Ranking.Select(l => l.Rank == 2 ? l with { BuildPrice = 1 } : l).ToList();
        Assert.Throws<Files.InputException>(() => RunFiles.WriteAll(run with { Judgement = run.Judgement with { Ranking = broken } }, folder.Path));
        Assert.Empty(folder.Files());
    }

    [Fact]
    public void Hostile_names_stay_inside_the_folder_and_harmless_in_a_spreadsheet()
    {
        using var folder = new ScratchFolder();
        var inner = folder.At("a", "b", "run");
        RunFiles.WriteAll(HostileRun.Make(), inner);
        Assert.All(folder.Files(), f => Assert.StartsWith("a/b/run/", f, StringComparison.Ordinal));
        foreach (var file in folder.Files().Where(f => f.EndsWith(".csv", StringComparison.Ordinal)))
        {
            var cells = CsvRows.Of(File.ReadAllText(folder.At(file))).SelectMany(r => r.Values).Where(v => v.Length > 0 && !double.TryParse(v, System.Globalization.CultureInfo.InvariantCulture, out _)).ToList();
            Assert.NotEmpty(cells);
            Assert.DoesNotContain(cells, c => "=+-@\t\r".Contains(c[0], StringComparison.Ordinal) || c.Contains('\0') || c.Contains('\u202E'));
        }
    }

    [Fact]
    public void A_run_in_which_nothing_is_ranked_is_still_told()
    {
        using var folder = new ScratchFolder();
        RunFiles.WriteAll(InventedRun.Of([]), folder.Path);
        Assert.Equal(["figures.html", "front.csv", "pareto.png", "pareto.svg", "ranking.csv", "report.html", "written.txt"], folder.Files());
    }

    [Fact]
    public void What_cannot_be_drawn_is_named_and_the_rest_is_there()
    {
        using var folder = new ScratchFolder();
        var run = InventedRun.Finished();
        var broken = run.Judgement.Ranking.Select(l => l.Rank == 1 ? l with { Scheme = null!, Wires = null! } : l).ToList();
        var unmade = RunFiles.WriteAll(run with { Judgement = run.Judgement with { Ranking = broken } }, folder.Path);
        Assert.NotEmpty(unmade);
        Assert.All(unmade, u => Assert.Matches("could not be made \\([A-Za-z]+Exception: ", u));
        var page = File.ReadAllText(folder.At("report.html"));
        Assert.Contains("Not whole.", page, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", page, StringComparison.Ordinal);
        Assert.Contains("front.csv", folder.Files());
    }

    [Fact]
    public void Where_the_page_itself_cannot_be_made_a_bare_one_says_so()
    {
        using var folder = new ScratchFolder();
        var run = InventedRun.Finished();
        Assert.NotEmpty(RunFiles.WriteAll(run with { Judgement = run.Judgement with { Picks = new(99, 98, 97, 96) } }, folder.Path));
        var page = File.ReadAllText(folder.At("report.html"));
        Assert.Contains("not whole", page, StringComparison.Ordinal);
        Assert.Contains(System.Net.WebUtility.HtmlEncode(run.Judgement.Answer)[..20], page, StringComparison.Ordinal);
    }
}
