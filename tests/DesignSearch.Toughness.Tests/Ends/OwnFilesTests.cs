using DesignSearch.Climate.Tests;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>What the builder put into a run's folder is left alone, whatever its name is and whatever command writes.</summary>
public sealed class OwnFilesTests
{
    private const string Diary = "Monday: the barrels came.\n";

    [Theory]
    [InlineData("journal")]
    [InlineData("front.csv")]
    [InlineData("ranking.csv")]
    [InlineData("pareto.png")]
    [InlineData("pareto.svg")]
    [InlineData("report.html")]
    [InlineData("figures.html")]
    [InlineData("written.txt")]
    [InlineData("searching.txt")]
    [InlineData("lists/1-my-own.toml")]
    [InlineData("lists/3-what-i-bought.csv")]
    [InlineData("lists")]
    public void A_file_of_ones_own_under_the_name_of_a_result_is_refused_and_kept(string name)
    {
        using var run = ShortWinter.Make();
        var path = Put(run, name);
        foreach (var option in new[] { "--quiet", "--force", "--resume" })
        {
            var ended = Inside.Run("search", run.Folder, "--evaluations", "64", option).With(2);
            Assert.Contains("move it away", ended.Error, StringComparison.Ordinal);
            Assert.Equal(Diary, File.ReadAllText(path));
            Assert.Equal(new[] { "scenario.toml", name.Split('/')[0] }.Order(StringComparer.Ordinal), Directory.EnumerateFileSystemEntries(run.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Files_of_ones_own_outlive_searches_and_reports()
    {
        using var run = ShortWinter.Make();
        string[] own = ["notes.csv", "report-of-my-own.html", "lists/my-own-layout.toml", "lists/what-i-bought.csv", "lists/1.csv", "front.csv.tmp", "stock.csv", "journal.txt"];
        var paths = own.Select(n => Put(run, n)).ToList();
        Inside.Run("search", run.Folder, "--evaluations", "64", "--quiet").With(0);
        Inside.Run("search", run.Folder, "--evaluations", "96", "--seed", "5", "--force", "--quiet").With(0);
        Inside.Run("report", run.Folder, "--quiet").With(0);
        Assert.All(paths, p => Assert.Equal(Diary, File.ReadAllText(p)));

        // What the first search wrote and the second did not is gone; nothing else is.
        var listed = File.ReadAllLines(Path.Combine(run.Folder, "written.txt")).Skip(1);
        var there = Directory.EnumerateFiles(run.Folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(run.Folder, f).Replace('\\', '/'));
        Assert.Equal(listed.Concat(own).Concat(["scenario.toml", "journal", "written.txt"]).Order(StringComparer.Ordinal), there.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_list_of_written_files_that_was_tampered_with_removes_nothing_else()
    {
        using var run = ShortWinter.Make();
        Inside.Run("search", run.Folder, "--evaluations", "64", "--quiet").With(0);
        var mine = Put(run, "lists/mine.toml");
        File.AppendAllText(Path.Combine(run.Folder, "written.txt"), "scenario.toml\nlists/mine.toml\n../x\nlists/../scenario.toml\n/etc/passwd\n");
        Inside.Run("search", run.Folder, "--evaluations", "64", "--force", "--quiet").With(0);
        Assert.True(File.Exists(mine));
        Assert.True(File.Exists(Path.Combine(run.Folder, "scenario.toml")));
    }

    [SkippableFact]
    public void Nothing_is_written_through_a_link_out_of_the_folder()
    {
        Skip.If(OperatingSystem.IsWindows(), "Links need rights there that few have.");
        using var elsewhere = ShortWinter.Make();
        var theirs = Put(elsewhere, "1-theirs.toml");
        foreach (var (name, target, isRefused) in new[] { ("lists", elsewhere.Folder, true), ("journal", theirs, true), ("report.html.designsearch.tmp", theirs, false) })
        {
            using var run = ShortWinter.Make();
            if (Directory.Exists(target))
                Directory.CreateSymbolicLink(Path.Combine(run.Folder, name), target);
            else
                File.CreateSymbolicLink(Path.Combine(run.Folder, name), target);
            Inside.Run("search", run.Folder, "--evaluations", "64", "--force", "--quiet").With(isRefused ? 2 : 0);
            Assert.Equal(Diary, File.ReadAllText(theirs));
        }
    }

    [Fact]
    public void An_output_that_is_an_input_or_something_else_is_refused()
    {
        using var run = ShortWinter.Make();
        var layout = Path.Combine(run.Folder, "mine.toml");
        File.Copy(Directory.EnumerateFiles(Repository.At("runs", "sample-finished", "lists"), "*-bare.toml").Single(), layout);
        var weather = Path.Combine(run.Folder, "w.csv");
        File.WriteAllText(weather, new MadeSky().Plain());
        var diary = Put(run, "diary.csv");
        foreach (var target in new[] { Path.Combine(run.Folder, "scenario.toml"), layout, diary, run.Folder, weather, Path.Combine(run.Folder, ".", "mine.toml") })
        {
            var before = File.Exists(target) ? File.ReadAllText(target) : "";
            Assert.StartsWith("--hourly: ", Inside.Run("simulate", run.Folder, "--layout", layout, "--hourly", target, "--quiet").With(2).Error, StringComparison.Ordinal);
            Assert.StartsWith("--picture: ", Inside.Run("weather", weather, "--picture", target, "--quiet").With(2).Error, StringComparison.Ordinal);
            Assert.Equal(before, File.Exists(target) ? File.ReadAllText(target) : "");
        }

        foreach (var _ in new[] { "new", "again" })
        {
            Inside.Run("simulate", run.Folder, "--layout", layout, "--hourly", Path.Combine(run.Folder, "hours.csv"), "--quiet").With(0);
            Inside.Run("weather", weather, "--picture", Path.Combine(run.Folder, "winter.png"), "--quiet").With(0);
        }
    }

    private static string Put(SmallScenario run, string name)
    {
        var path = Path.Combine(run.Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, Diary);
        return path;
    }
}
