using DesignSearch.Files;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Catalogues;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class HostileNameTests
{
    [Theory]
    [InlineData("=HYPERLINK(\"\"x\"\")")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("@SUM(A1:A9)")]
    [InlineData("-2+3")]
    [InlineData("Fass mit Öl, 200 L; '\"\"; DROP")]
    [InlineData("水桶 🛢")]
    public void Name_survives_reading_and_never_runs_in_a_spreadsheet(string name)
    {
        var text = Sample.BarrelHeader + "\n" + Sample.BarrelRow.Replace("Barrel A", '"' + name + '"', StringComparison.Ordinal) + "\n";
        var faults = new FaultList();
        var catalogue = Sample.InFolder(folder => Catalogue.Load([folder], Kinds.All, faults), ("barrels.csv", text));
        faults.ThrowIfAny();
        var read = Assert.Single(catalogue.Of<Barrel>()).Name;
        Assert.Equal(name.Replace("\"\"", "\"", StringComparison.Ordinal), read);
        var list = new CsvText([], "name");
        list.Row(read);
        var cell = list.ToString().Split('\n')[1].TrimStart('"');
        Assert.DoesNotContain(cell[0], "=+-@");
    }

    [Fact]
    public void Control_characters_in_a_fault_are_shown_harmlessly()
    {
        var fault = Assert.Single(Sample.FaultsOf("barrels.csv", Sample.BarrelHeader + "\n" + Sample.BarrelRow.Replace("barrel-a", "a\u001B[2Jb", StringComparison.Ordinal) + "\n"));
        Assert.DoesNotContain('\u001B', fault.ToString());
    }

    [Fact]
    public void Far_too_long_name_is_a_fault() =>
        Assert.Contains("at most 400 characters", Assert.Single(Sample.FaultsOf("barrels.csv", Sample.BarrelHeader + "\n" + Sample.BarrelRow.Replace("Barrel A", new string('x', 5000), StringComparison.Ordinal) + "\n")).Expected, StringComparison.Ordinal);
}
