using DesignSearch.Files;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Tests;
using DesignSearch.Runs.Checking;
using DesignSearch.Runs.Folder;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Runs.Tests;

/// <summary>A hundred mistakes: each is one fault at its place with a sentence that mends it, or one doubt in the read-back.</summary>
public sealed class MistakesTests
{
    public static TheoryData<int> InScenario => [.. Enumerable.Range(0, Mistakes.InScenario.Count)];

    public static TheoryData<int> InCatalogue => [.. Enumerable.Range(0, Mistakes.InCatalogue.Count)];

    public static TheoryData<int> InStock => [.. Enumerable.Range(0, Mistakes.InStock.Count)];

    public static TheoryData<int> Doubted => [.. Enumerable.Range(0, Mistakes.Doubted.Count)];

    [Fact]
    public void There_are_a_hundred()
    {
        var all = Mistakes.InScenario.Concat(Mistakes.InCatalogue.Select(m => m.Mistake)).Concat(Mistakes.InStock.Select(m => m.Mistake)).Concat(Mistakes.Doubted).ToList();
        Assert.True(all.Count >= 100, $"{all.Count}");
        Assert.Equal(all.Count, all.Select(m => m.What).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(InScenario))]
    public void In_the_scenario_is_one_fault_at_its_line(int number)
    {
        var mistake = Mistakes.InScenario[number];
        using var small = new SmallScenario((mistake.From, mistake.To));
        var lines = File.ReadAllLines(Path.Combine(small.Folder, "scenario.toml"));
        var at = mistake.At ?? mistake.To.Split('\n')[0];
        Check(mistake, small.Faults(), "scenario.toml", 1 + Array.FindLastIndex(lines, l => l.Contains(at, StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(InCatalogue))]
    public void In_the_catalogue_is_one_fault_at_its_row(int number)
    {
        var (name, mistake) = Mistakes.InCatalogue[number];
        using var small = new SmallScenario((Repository.At("catalogs", "starter").Replace('\\', '/'), "mine"), ("[site]", "stock = \"stock.csv\"\n[site]"));
        var own = Directory.CreateDirectory(Path.Combine(small.Folder, "mine")).FullName;
        foreach (var file in Directory.EnumerateFiles(Repository.At("catalogs", "starter"), "*.csv"))
            File.Copy(file, Path.Combine(own, Path.GetFileName(file)));
        File.WriteAllText(Path.Combine(small.Folder, "stock.csv"), "id,quantity\nbarrel-200-used,4\n");
        var text = File.ReadAllText(Path.Combine(own, name));
        var changed = text.IndexOf(mistake.From, StringComparison.Ordinal);
        Assert.True(changed >= 0, mistake.What);
        text = text[..changed] + mistake.To + text[(changed + mistake.From.Length)..];
        File.WriteAllText(Path.Combine(own, name), text);
        Check(mistake, small.Faults(), name, 1 + Array.FindIndex(text.Split('\n'), l => l.StartsWith(mistake.At!, StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(InStock))]
    public void In_the_stock_is_one_fault_at_its_row(int number)
    {
        var (line, mistake) = Mistakes.InStock[number];
        using var small = new SmallScenario(("[site]", "stock = \"stock.csv\"\n[site]"));
        File.WriteAllText(Path.Combine(small.Folder, "stock.csv"), mistake.To);
        Check(mistake, small.Faults(), "stock.csv", line);
    }

    [Theory]
    [MemberData(nameof(Doubted))]
    public void What_can_be_read_is_one_doubt(int number)
    {
        var mistake = Mistakes.Doubted[number];
        using var small = new SmallScenario((mistake.From, mistake.To));
        var folder = new RunFolder(small.Folder);
        var doubts = ScenarioReader.Read(small.Folder).Doubts.Concat(GroupedNumbers.Of(folder)).ToList();
        Assert.True(doubts.Count == 1, $"{mistake.What}: {string.Join('\n', doubts)}");
        Assert.Contains(mistake.Told, doubts[0], StringComparison.Ordinal);
    }

    private static void Check(Mistake mistake, IReadOnlyList<InputFault> faults, string file, int line)
    {
        Assert.True(faults.Count == 1, $"{mistake.What}: {faults.Count} faults\n{string.Join('\n', faults)}");
        Assert.EndsWith(file, faults[0].File, StringComparison.Ordinal);
        Assert.Contains(mistake.Told, faults[0].ToString(), StringComparison.Ordinal);
        Assert.True(line == faults[0].Line, $"{mistake.What}: expected in line {line}: {faults[0]}");
    }
}
