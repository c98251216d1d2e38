using DesignSearch.Climate.Tests;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>A few hundred spoilt files through whole commands, some of them in a process of its own: exit code and streams as a person meets them.</summary>
public sealed class ProgramMutantTests
{
    // As a process a second of starting each, so fewer on a usual day.
    private static readonly int Processes = Longer.Many("DESIGNSEARCH_PROCESSES", usual: 2, longer: 50);
    private static readonly int Commands = Longer.Many("DESIGNSEARCH_COMMANDS", usual: 25, longer: 250);

    [Fact]
    public void Scenarios() => Spoil("scenario.toml", folder => ["check", folder]);

    [Fact]
    public void Layouts() => Spoil("layout.toml", folder => ["simulate", folder, "--layout", Path.Combine(folder, "layout.toml")]);

    [Fact]
    public void Weather() => Spoil("w.csv", folder => ["weather", Path.Combine(folder, "w.csv")]);

    [Fact]
    public void Stored_runs() => Spoil("run.json", folder => ["report", folder]);

    private static void Spoil(string name, Func<string, string[]> words) => Parallel.For(0, Math.Max(Processes, Commands), new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
    {
        using var run = new SmallScenario();
        MutantTests.Run(run.Folder);
        File.Copy(Repository.At("runs", "sample-finished", "run.json"), Path.Combine(run.Folder, "run.json"));
        File.Copy(Directory.EnumerateFiles(Repository.At("runs", "sample-finished", "lists"), "*-bare.toml").Single(), Path.Combine(run.Folder, "layout.toml"));
        File.WriteAllText(Path.Combine(run.Folder, "w.csv"), string.Join('\n', new MadeSky().Plain().Split('\n').Take(60)));
        var path = Path.Combine(run.Folder, name);
        File.WriteAllBytes(path, new Mutator(i + 77_000).Spoil(File.ReadAllBytes(path)));
        string[] all = [.. words(run.Folder), "--quiet"];
        var ended = i < Processes ? Designsearch.Run(all) : Inside.Run(all);
        Assert.DoesNotContain("   at ", ended.Error, StringComparison.Ordinal);
        Assert.True(ended.Code is 0 or 2, $"{name}, seed {i}: ended with {ended.Code}: {ended.Error}");
        if (ended.Code == 0)
            return;
        Assert.Empty(ended.Output);
        Assert.Matches("[0-9]+ faults?; nothing was written", ended.Error);
        // A weather file is also judged as a whole.
        if (name != "w.csv")
            Assert.Matches("(?m)^" + System.Text.RegularExpressions.Regex.Escape(path) + ":[0-9]+:[0-9]+: ", ended.Error);
    });
}
