using CsCheck;
using DesignSearch.Files;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class CatalogueTests
{
    [Fact]
    public void Starter_catalogue_has_no_fault_and_every_kind()
    {
        var catalogue = Load("starter");
        Assert.True(catalogue.All.Count >= 120, $"only {catalogue.All.Count} parts");
        Assert.Equal(Kinds.All, catalogue.Kinds);
        Assert.Equal(Enum.GetValues<SmallPartRole>(), catalogue.Of<SmallPart>().Select(s => s.Role).Distinct().Order());
        Assert.Equal(Enum.GetValues<TurningKind>(), catalogue.Of<CollectorMount>().Select(m => m.Turning).Distinct().Order());
        Assert.Equal(Enum.GetValues<FreezeMethod>(), catalogue.Of<FreezeProtection>().Select(f => f.Method).Distinct().Order());
        Assert.Equal(Enum.GetValues<ReleaseForm>(), catalogue.Of<HeatRelease>().Select(r => r.Form).Distinct().Order());
        Assert.Equal(Enum.GetValues<TorqueUnit>(), catalogue.Of<Drive>().Select(d => d.TorqueUnit).Distinct().Order());
    }

    [Fact]
    public void Each_note_is_a_sentence_and_each_price_says_that_it_is_invented()
    {
        Assert.All(Load("starter", "second-hand-corner").All, p => Assert.True(p.Info.Note.Length > 15 && p.Info.Note.EndsWith('.'), p.Id + ": " + p.Info.Note));
        foreach (var file in Directory.EnumerateFiles(Repository.At("catalogs"), "*.csv", SearchOption.AllDirectories))
            Assert.Contains("is invented", File.ReadLines(file).Skip(1).First(), StringComparison.Ordinal);
    }

    [Fact]
    public void Second_catalogue_adds_to_the_first()
    {
        var (one, two) = (Load("starter"), Load("starter", "second-hand-corner"));
        Assert.Equal(one.All.Count + 8, two.All.Count);
        Assert.True(two.TryFind<Collector>("barn-flat-plate-2m", out var collector));
        Assert.Equal(90m, collector.Price);
        Assert.False(two.TryFind<Tank>("barn-flat-plate-2m", out _));
        Assert.False(one.TryFind<IPart>("barn-flat-plate-2m", out _));
    }

    [Fact]
    public void Row_is_read_as_written()
    {
        Assert.True(Load("starter").TryFind<Drive>("worm-35", out var drive));
        Assert.Equal((35, TorqueUnit.KgCm, "drive", 65m), (drive.Torque, drive.TorqueUnit, drive.Kind.Name, drive.Price));
        Assert.Equal(3.4323, drive.TorqueNm, 4);
    }

    [Fact]
    public void Same_catalogue_twice_makes_every_id_a_fault()
    {
        var faults = new FaultList();
        var folder = Repository.At("catalogs", "second-hand-corner");
        var catalogue = Catalogue.Load([folder, folder], Kinds.All, faults);
        Assert.Equal(8, catalogue.All.Count);
        Assert.Equal(8, faults.Faults.Count);
        Assert.All(faults.Faults, f => Assert.Contains("has this one already", f.Expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Missing_folder_is_named()
    {
        var faults = new FaultList();
        Assert.Empty(Catalogue.Load(["no-such-folder"], Kinds.All, faults).All);
        Assert.Equal("no-such-folder", Assert.Single(faults.Faults).File);
    }

    [Fact]
    public void Folder_without_tables_and_unknown_files_are_named()
    {
        Assert.Contains("at least one of the files", Assert.Single(Sample.FaultsOf()).Expected, StringComparison.Ordinal);
        var fault = Assert.Single(Sample.FaultsOf(("barrel.csv", "")));
        Assert.Contains("did you mean 'barrels.csv'?", fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("barrel-a,Barrel A,piece,22.00,25.00,40.00,,10,0.5,200,0.58,0.93,9,x", "price_low: at most", 31)]
    [InlineData("barrel-a,Barrel A,piece,22.00,12.00,20.00,,10,0.5,200,0.58,0.93,9,x", "price_high: at least", 37)]
    [InlineData("barrel-a,Barrel A,piece,-22.00,12.00,20.00,,10,0.5,200,0.58,0.93,9,x", "price: an amount of money", 25)]
    [InlineData("barrel-a,Barrel A,piece,22.005,12.00,40.00,,10,0.5,200,0.58,0.93,9,x", "price: an amount of money", 25)]
    [InlineData("barrel-a,Barrel A,m2,22.00,12.00,40.00,,10,0.5,200,0.58,0.93,9,x", "unit: piece", 19)]
    [InlineData("barrel-a,Barrel A,peice,22.00,12.00,40.00,,10,0.5,200,0.58,0.93,9,x", "did you mean 'piece'?", 19)]
    [InlineData("Barrel A,Barrel A,piece,22.00,12.00,40.00,,10,0.5,200,0.58,0.93,9,x", "id: a short name", 1)]
    [InlineData("barrel-a,,piece,22.00,12.00,40.00,,10,0.5,200,0.58,0.93,9,x", "name: some text", 10)]
    [InlineData("barrel-a,Barrel A,piece,22.00,12.00,40.00,abc,10,0.5,200,0.58,0.93,9,x", "price_second_hand: an amount", 43)]
    [InlineData("barrel-a,Barrel A,piece,22.00,12.00,40.00,,0,0.5,200,0.58,0.93,9,x", "life_years: a number from 0.25", 44)]
    [InlineData("barrel-a,Barrel A,piece,22.00,12.00,40.00,,10,0.5,NaN,0.58,0.93,9,x", "volume_l: a number from 5", 51)]
    [InlineData("barrel-a,Barrel A,piece,22.00,12.00,40.00,,10,0.5,\"200,5\",0.58,0.93,9,x", "volume_l: a number from 5", 51)]
    [InlineData("barrel-a,Barrel A,piece,22.00,12.00,40.00,,10,0.5,\"1,500\",0.58,0.93,9,x", "volume_l: a number from 5", 51)]
    public void Bad_cell_is_placed(string row, string expected, int column)
    {
        var fault = Assert.Single(Sample.FaultsOf("barrels.csv", Sample.BarrelHeader + "\n" + row + "\n"));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
        Assert.Equal((2, column), (fault.Line, fault.Column));
    }

    [Fact]
    public void Row_inside_the_ranges_is_read_as_written() =>
        Gen.Select(Gen.Int[1, 1_000_00], Gen.Int[0, 100], Gen.Int[0, 100], Gen.Double[5, 1500], Gen.Double[0.1, 2]).Sample((cents, less, more, volume, diameter) =>
        {
            var (low, usual, high) = (Math.Max(0, cents - less) / 100m, cents / 100m, (cents + more) / 100m);
            var table = new CsvText([], Sample.BarrelHeader.Split(','));
            table.Row("b", "B", "piece", usual, low, high, null, 10, 0.5, volume, diameter, 1.0, 9, "A note.");
            var faults = new FaultList();
            var barrel = Assert.Single(Sample.InFolder(f => Catalogue.Load([f], Kinds.All, faults), ("barrels.csv", table.ToString())).Of<Barrel>());
            faults.ThrowIfAny();
            Assert.Equal((low, usual, high, volume, diameter), (barrel.Info.PriceLow, barrel.Price, barrel.Info.PriceHigh, barrel.VolumeL, barrel.DiameterM));
            Assert.Null(barrel.Info.PriceSecondHand);
        });

    [Fact]
    public void Rules_between_cells_are_held()
    {
        var text = File.ReadAllText(Repository.At("catalogs", "starter", "pipes.csv")).Replace(",15.4,20,", ",20,15.4,", StringComparison.Ordinal);
        Assert.Contains("bore_mm: less than outer_mm (part ldpe-20)", Assert.Single(Sample.FaultsOf("pipes.csv", text)).Expected, StringComparison.Ordinal);
        text = File.ReadAllText(Repository.At("catalogs", "starter", "mounts.csv")).Replace(",two-position,sloping,5,", ",two-position,none,5,", StringComparison.Ordinal);
        Assert.Contains("axis: none for a fixed mount", Assert.Single(Sample.FaultsOf("mounts.csv", text)).Expected, StringComparison.Ordinal);
        text = File.ReadAllText(Repository.At("catalogs", "starter", "cables.csv")).Replace(",2.5,5,16,", ",3,5,16,", StringComparison.Ordinal);
        Assert.Contains("section_mm2: a cross-section", Assert.Single(Sample.FaultsOf("cables.csv", text)).Expected, StringComparison.Ordinal);
        text = File.ReadAllText(Repository.At("catalogs", "starter", "small-parts.csv")).Replace("footings,m3,", "footings,set,", StringComparison.Ordinal);
        Assert.Contains("unit: m3 for cement", Assert.Single(Sample.FaultsOf("small-parts.csv", text)).Expected, StringComparison.Ordinal);
        text = File.ReadAllText(Repository.At("catalogs", "starter", "holdfasts.csv")).Replace("stops,4000,0.6,", "stops,4000,0,", StringComparison.Ordinal);
        Assert.Contains("arm_m: more than 0 for what holds a frame", Assert.Single(Sample.FaultsOf("holdfasts.csv", text)).Expected, StringComparison.Ordinal);
    }

    private static Catalogue Load(params string[] names)
    {
        var faults = new FaultList();
        var catalogue = Catalogue.Load(names.Select(n => Repository.At("catalogs", n)), Kinds.All, faults);
        faults.ThrowIfAny();
        return catalogue;
    }
}
