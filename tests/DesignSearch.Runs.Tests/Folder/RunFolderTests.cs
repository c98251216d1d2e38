using DesignSearch.Files;
using DesignSearch.Runs.Checking;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Searching;
using DesignSearch.Runs.Store;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Runs.Tests;

/// <summary>What lies in a run's folder under which name, who may write there, and what a search may replace.</summary>
public sealed class RunFolderTests : IDisposable
{
    private readonly string path = Directory.CreateTempSubdirectory("designsearch-folder-").FullName;

    private RunFolder Folder => new(path);

    public void Dispose() => Directory.Delete(path, recursive: true);

    // The names that docs/file-formats.md promises.
    [Fact]
    public void Files_have_the_names_that_people_look_for()
    {
        var folder = new RunFolder("runs/a/");
        Assert.Equal("runs/a", folder.Path);
        Assert.Equal("/", new RunFolder("/").Path);
        string[] paths = [folder.Scenario, folder.RunFile, folder.Journal, folder.UnderWay, folder.Written, folder.Report, folder.Lists, RunFolder.NoteBeside(folder.Journal)];
        Assert.Equal(
            ["scenario.toml", "run.json", "journal", "searching.txt", "written.txt", "report.html", "lists", "searching.txt"],
            paths.Select(p => Path.GetRelativePath("runs/a", p).Replace('\\', '/')));
    }

    // FIPS 180-4, the example of three letters.
    [Fact]
    public void A_files_hash_is_the_published_one()
    {
        File.WriteAllText(Path.Combine(path, "abc"), "abc");
        const string hash = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        Assert.Equal(hash, FileHash.Of(Path.Combine(path, "abc")));
        Assert.Equal([new StoredInput("shown", hash)], FileHash.Of([("shown", Path.Combine(path, "abc"))]));
        Assert.Throws<InputException>(() => FileHash.Of([("shown", Path.Combine(path, "none"))]));
    }

    [Fact]
    public void A_note_says_who_is_at_work_and_a_file_of_ones_own_is_no_note()
    {
        Assert.True(FolderHold.IsNoteOrFree(Folder));
        FolderHold.Begin(Folder, "process 7 on shed");
        Assert.True(FolderHold.IsNoteOrFree(Folder));
        File.WriteAllText(Folder.Journal, "");
        using (FolderHold.Of(Folder))
        {
            var told = Assert.Throws<IOException>(() => FolderHold.Open(Folder.Journal, FileMode.Open, FileAccess.ReadWrite));
            Assert.Contains("belongs to a search that is under way (process 7 on shed).", told.Message, StringComparison.Ordinal);
        }

        Assert.Contains("under way", Assert.Throws<IOException>(() => FolderHold.Open(Folder.Journal, FileMode.CreateNew, FileAccess.ReadWrite)).Message, StringComparison.Ordinal);
        using (FolderHold.Open(Folder.Journal, FileMode.Open, FileAccess.ReadWrite))
            FolderHold.End(Folder);
        Assert.False(File.Exists(Folder.UnderWay));
        File.WriteAllText(Folder.UnderWay, "Searching for a spade.");
        Assert.False(FolderHold.IsNoteOrFree(Folder));
    }

    [Fact]
    public void A_run_is_broken_off_while_its_note_or_no_result_stands_beside_its_journal()
    {
        Assert.False(Folder.IsBrokenOff || Folder.HasJournal || Folder.IsFinished);
        File.WriteAllText(Folder.Journal, "");
        Assert.True(Folder.IsBrokenOff);
        File.WriteAllText(Folder.RunFile, "{}");
        Assert.False(Folder.IsBrokenOff);
        FolderHold.Begin(Folder, "x");
        Assert.True(Folder.IsBrokenOff);
    }

    [Fact]
    public void What_a_search_wrote_is_replaced_what_it_writes_no_more_goes_and_nothing_else()
    {
        Write(_ => true, "run.json", "front.csv", "lists/1-a.csv", "lists/2-b.toml");
        File.WriteAllText(Folder.At("lists/3-mine.csv"), "mine");
        File.WriteAllText(Folder.At("run.json.designsearch.tmp"), "half");
        File.WriteAllText(Folder.At("lists/1-a.csv.designsearch.tmp"), "half");
        Write(n => n.StartsWith("lists/", StringComparison.Ordinal) && n.EndsWith(".csv", StringComparison.Ordinal), "front.csv", "lists/1-b.csv");
        Assert.Equal(["front.csv", "lists/1-b.csv", "lists/2-b.toml", "lists/3-mine.csv", "run.json", "written.txt"], Names());
        Assert.Equal(["front.csv", "lists/1-b.csv", "lists/2-b.toml", "run.json"], File.ReadAllLines(Folder.Written).Skip(1));
        Assert.Equal("of lists/1-b.csv", File.ReadAllText(Folder.At("lists/1-b.csv")));
        var told = Assert.Throws<InputException>(() => RunOutputs.Of(Folder).RefuseForeign());
        Assert.EndsWith("3-mine.csv", Assert.Single(told.Faults).File, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_that_are_taken_are_all_told_before_anything_is_written()
    {
        RunOutputs.Of(Folder).RefuseForeign();
        File.WriteAllText(Folder.At("front.csv"), "mine");
        Directory.CreateDirectory(Folder.At("pareto.png"));
        File.WriteAllText(Folder.Lists, "mine");
        File.WriteAllText(Folder.Written, "mine");
        File.WriteAllText(Folder.UnderWay, "mine");
        var told = Assert.Throws<InputException>(() => RunOutputs.Of(Folder).RefuseForeign());
        Assert.Equal(["front.csv", "lists", "pareto.png", "searching.txt", "written.txt"], told.Faults.Select(f => Path.GetFileName(f.File)).Order(StringComparer.Ordinal));
    }

    // A finished run of a time before there was a list of what was written: what is named like a result is one.
    [Fact]
    public void A_run_without_a_list_owns_what_is_named_like_a_result()
    {
        File.WriteAllText(Folder.RunFile, "{}");
        Directory.CreateDirectory(Folder.Lists);
        File.WriteAllText(Folder.At("lists/1-a.csv"), "");
        File.WriteAllText(Folder.At("lists/notes.csv"), "");
        RunOutputs.Of(Folder).RefuseForeign();
        Write(n => n.StartsWith("lists/", StringComparison.Ordinal), "run.json");
        Assert.Equal(["lists/notes.csv", "run.json", "written.txt"], Names());
    }

    [Theory]
    [InlineData("lists/1-a.csv", true)]
    [InlineData("lists/123456789-a-2.svg", true)]
    [InlineData("lists/1-a.toml", true)]
    [InlineData("lists/1234567890-a.csv", false)]
    [InlineData("lists/1-A.csv", false)]
    [InlineData("lists/a.csv", false)]
    [InlineData("lists/1-a.txt", false)]
    [InlineData("lists/../1-a.csv", false)]
    [InlineData("1-a.csv", false)]
    public void Results_are_known_by_their_names(string name, bool isResult) => Assert.Equal(isResult, RunOutputs.IsResult(name));

    [Fact]
    public void A_folder_that_is_not_there_and_a_run_that_has_not_been_are_told()
    {
        var none = new RunFolder(Path.Combine(path, "none"));
        var told = Assert.Throws<InputException>(() => RunCheck.Of(none, w => 0));
        Assert.Contains("a run folder; there is none of this name", told.Faults.Single().Expected, StringComparison.Ordinal);
        Assert.Contains("run 'search' on this folder first", Assert.Throws<InputException>(() => RunStore.Load(Folder)).Faults.Single().Expected, StringComparison.Ordinal);
        foreach (var (text, line) in (ReadOnlySpan<(string, int)>)[("{}", 1), ("[]", 1), ("{\n\"formatVersion\": \"1\"}", 1), ("{\n\n\"a\" 1}", 3)])
        {
            File.WriteAllText(Folder.RunFile, text);
            Assert.Equal(line, Assert.Throws<InputException>(() => RunStore.Load(Folder)).Faults.Single().Line);
        }
    }

    [Fact]
    public void A_search_begins_nothing_where_a_name_is_taken()
    {
        File.WriteAllText(Folder.Scenario, "");
        File.WriteAllText(Folder.At("front.csv"), "mine");
        var request = new SearchRequest(Folder, null, null, null, 2, false, false, "test");
        var told = Assert.Throws<InputException>(() => SearchRun.Execute(request, () => TimeSpan.Zero, null, CancellationToken.None));
        Assert.EndsWith("front.csv", Assert.Single(told.Faults).File, StringComparison.Ordinal);
        Assert.Equal(["front.csv", "scenario.toml"], Names());
    }

    [Fact]
    public void Runs_are_gathered_in_every_state()
    {
        Assert.Throws<InputException>(() => RunGatherer.Of(Path.Combine(path, "none")));
        Assert.Throws<InputException>(() => RunGatherer.Of(path));
        foreach (var name in (string[])["new", "deep/broken", "odd", "whole"])
        {
            Directory.CreateDirectory(Folder.At(name));
            File.WriteAllText(new RunFolder(Folder.At(name)).Scenario, "");
        }

        File.WriteAllText(new RunFolder(Folder.At("deep/broken")).Journal, "");
        File.WriteAllText(new RunFolder(Folder.At("odd")).RunFile, "{}");
        File.Copy(Repository.At("runs", "sample-finished", "run.json"), new RunFolder(Folder.At("whole")).RunFile);
        var runs = RunGatherer.Of(path);
        Assert.Equal([("deep/broken", "under way"), ("new", "not begun"), ("odd", "unreadable"), ("whole", "finished")], runs.Select(r => (r.Folder, r.State)));
        Assert.Equal([false, false, false, true], runs.Select(r => r.Run is not null));
        Assert.Equal([true, false, true], runs.Take(3).Select(r => r.Note.Length > 0));
        Assert.Equal(("", "finished"), (RunGatherer.Of(Folder.At("whole")).Single().Folder.Trim('.'), RunGatherer.Of(Folder.At("whole")).Single().State));
    }

    private void Write(Func<string, bool> isOfKind, params string[] names) =>
        RunOutputs.Of(Folder).Replace(isOfKind, names.Select(n => (n, RunOutputs.Bytes("of " + n))));

    private IEnumerable<string> Names() =>
        Directory.EnumerateFiles(path, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(path, f).Replace('\\', '/')).Order(StringComparer.Ordinal);
}
