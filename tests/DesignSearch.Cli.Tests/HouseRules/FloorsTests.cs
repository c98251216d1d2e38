using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Imports run only downwards: docs/decisions/0004-floors.md.</summary>
public sealed partial class FloorsTests
{
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Files"] = [],
        ["Physics"] = [],
        ["Search"] = [],
        ["Climate"] = ["Files", "Physics"],
        ["Parts"] = ["Files", "Physics"],
        ["Season"] = ["Climate", "Files", "Physics"],
        ["Layouts"] = ["Search", "Climate", "Parts", "Season", "Files", "Physics"],
        ["Fitting"] = ["Layouts", "Climate", "Season", "Files"],
        ["Runs"] = ["Layouts", "Search", "Climate", "Parts", "Season", "Files", "Physics"],
        ["Reporting"] = ["Runs", "Fitting", "Layouts", "Climate", "Parts", "Season", "Files", "Physics"],
        ["Cli"] = ["Reporting", "Runs", "Fitting", "Layouts", "Search", "Climate", "Parts", "Season", "Files", "Physics"],
    };

    public static TheoryData<string> Floors => [.. MayKnow.Keys];

    internal static IEnumerable<string> Names => MayKnow.Keys;

    [Theory]
    [MemberData(nameof(Floors))]
    public void A_project_names_only_floors_below_it(string floor)
    {
        var project = XDocument.Load(Repository.At("src", "DesignSearch." + floor, $"DesignSearch.{floor}.csproj"));
        var named = project.Descendants("ProjectReference").Select(r => Floor().Match(r.Attribute("Include")!.Value).Groups[1].Value);
        Assert.Empty(named.Except(MayKnow[floor]));
    }

    [Theory]
    [MemberData(nameof(Floors))]
    public void An_assembly_uses_only_floors_below_it(string floor)
    {
        var name = floor == "Cli" ? "designsearch" : "DesignSearch." + floor;
        var used = Assembly.Load(name).GetReferencedAssemblies().Select(a => a.Name!).Where(n => n.StartsWith("DesignSearch.", StringComparison.Ordinal)).Select(n => n["DesignSearch.".Length..]);
        Assert.Empty(used.Except(MayKnow[floor]));
    }

    [Fact]
    public void Every_project_has_its_place_in_the_house()
    {
        var folders = Directory.EnumerateDirectories(Repository.At("src"), "DesignSearch.*").Select(f => Path.GetFileName(f)["DesignSearch.".Length..]);
        Assert.Equal(MayKnow.Keys.Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
    }

    [GeneratedRegex(@"DesignSearch\.(\w+)\.csproj$")]
    private static partial Regex Floor();
}
