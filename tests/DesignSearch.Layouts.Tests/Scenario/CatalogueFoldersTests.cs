using DesignSearch.Layouts.Scenarios;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class CatalogueFoldersTests : IDisposable
{
    private readonly string home = Directory.CreateTempSubdirectory("designsearch-").FullName;

    private string Run => Path.Combine(home, "runs", "mine");

    [Fact]
    public void A_name_is_looked_for_in_the_run_beside_it_and_above_the_runs_in_this_order()
    {
        Directory.CreateDirectory(Run);
        Assert.Null(CatalogueFolders.Find(Run, "own"));
        foreach (var place in (string[])["catalogs/own", "runs/catalogs/own", "runs/own", "runs/mine/catalogs/own", "runs/mine/own"])
        {
            Directory.CreateDirectory(Path.Combine(home, place));
            Assert.Equal(Path.Combine(home, place), Path.GetFullPath(CatalogueFolders.Find(Run, "own")!));
        }

        Assert.Equal(home, Path.GetFullPath(CatalogueFolders.Find(Run, "../..")!));
        Assert.Null(CatalogueFolders.Find(Run, "../own-not"));
    }

    [Fact]
    public void An_input_is_found_again_by_its_stored_name()
    {
        Directory.CreateDirectory(Path.Combine(home, "catalogs", "own"));
        Directory.CreateDirectory(Run);
        File.WriteAllText(Path.Combine(home, "catalogs", "own", "barrels.csv"), "");
        Assert.Equal(Path.Combine(home, "catalogs", "own", "barrels.csv"), Path.GetFullPath(CatalogueFolders.FileOf(Run, "own/barrels.csv")));
        Assert.Equal(Path.Combine(Run, "scenario.toml"), CatalogueFolders.FileOf(Run, "scenario.toml"));
        Assert.Equal(Path.Combine(Run, "lost/barrels.csv"), CatalogueFolders.FileOf(Run, "lost/barrels.csv"));
    }

    // The parts that are then unknown follow from it and are not told.
    [Theory]
    [InlineData("../../catalogs/starter", "a folder of catalogue files; there is none of this name")]
    [InlineData("no-such-catalogue", "a catalogue of this name; there is none beside the run")]
    public void A_run_that_lost_its_catalogue_says_so_as_one_fault(string named, string expected)
    {
        using var small = new SmallScenario((Repository.At("catalogs", "starter").Replace('\\', '/'), named), ("[site]", "stock = \"stock.csv\"\n[site]"));
        File.WriteAllText(Path.Combine(small.Folder, "stock.csv"), "id,quantity\nbarrel-200-used,4\n");
        var fault = Assert.Single(small.Faults());
        Assert.Equal(named, fault.Value);
        Assert.StartsWith(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_path_that_leads_nowhere_is_told_of_a_catalogue_of_that_name()
    {
        using var small = new SmallScenario((Repository.At("catalogs", "starter").Replace('\\', '/'), "../elsewhere/starter"));
        Directory.CreateDirectory(Path.Combine(small.Folder, "catalogs", "starter"));
        Assert.EndsWith("(write \"starter\" alone: there is one of this name)", Assert.Single(small.Faults()).Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("barrel-200-used,Used barrel of steel,piece,30 €")]
    [InlineData("barrel-200-used,Used barrel of steel,piece,ca. 30")]
    public void What_names_a_part_whose_row_is_at_fault_is_not_told_too(string row)
    {
        using var small = new SmallScenario(
            (Repository.At("catalogs", "starter").Replace('\\', '/'), "mine"), ("[site]", "stock = \"stock.csv\"\n[site]"));
        var own = Path.Combine(small.Folder, "mine");
        Directory.CreateDirectory(own);
        foreach (var file in Directory.EnumerateFiles(Repository.At("catalogs", "starter"), "*.csv"))
            File.Copy(file, Path.Combine(own, Path.GetFileName(file)));
        var barrels = Path.Combine(own, "barrels.csv");
        File.WriteAllLines(barrels, File.ReadAllLines(barrels).Select(l => l.StartsWith("barrel-200-used,", StringComparison.Ordinal) ? row + l[NthComma(l, 6)..] : l));
        File.WriteAllText(Path.Combine(small.Folder, "stock.csv"), "id,quantity\nbarrel-200-used,4\n");
        Assert.Contains("price: an amount of money", Assert.Single(small.Faults()).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fault_of_scenario_and_catalogue_is_told_beside_it()
    {
        using var small = new SmallScenario((Repository.At("catalogs", "starter").Replace('\\', '/'), "lost"), ("heater_set_c = 4", "heater_set_c = 400"));
        Assert.Equal(["lost", "400"], small.Faults().Select(f => f.Value));
    }

    public void Dispose() => Directory.Delete(home, recursive: true);

    private static int NthComma(string line, int nth)
    {
        var at = -1;
        for (var i = 0; i < nth; i++)
            at = line.IndexOf(',', at + 1);
        return at;
    }
}
