using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Extensions;
using ArchUnitNET.Loader;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Floors inside a project: rooms lean one way, and no system knows another (docs/decisions/0009-systems.md).</summary>
public sealed class RoomsTests
{
    private const string Layouts = "DesignSearch.Layouts";

    private static readonly Architecture House = new ArchLoader().LoadAssemblies(typeof(Layout).Assembly, typeof(Installation).Assembly).Build();

    // Each room of Layouts and the rooms it may know besides itself.
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Words"] = [],
        ["Design"] = ["Words"],
        ["Systems"] = ["Design", "Words"],
        ["Scenarios"] = ["Design", "Systems", "Words"],
        ["Assess"] = ["Design", "Systems", "Words"],
        ["Decide"] = ["Design", "Systems", "Assess", "Words"],
    };

    public static TheoryData<string> Rooms => [.. MayKnow.Keys];

    public static TheoryData<string> Systems => [.. Folders(Layouts, "Systems")];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_knows_only_rooms_below_it(string room)
    {
        var wrong = Uses($"{Layouts}.{room}", Layouts).Where(u => RoomOf(u.To) is { } other && other != room && !MayKnow[room].Contains(other));
        Assert.Empty(wrong.Select(u => $"{u.From} uses {u.To}").Distinct());
    }

    [Fact]
    public void Every_room_has_its_place() => Assert.Equal(MayKnow.Keys.Order(StringComparer.Ordinal), Folders(Layouts, ".").Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Systems))]
    public void No_system_knows_another(string system)
    {
        var own = $"{Layouts}.Systems.{system}";
        var wrong = Uses(own, $"{Layouts}.Systems.").Where(u => !u.To.StartsWith(own + ".", StringComparison.Ordinal));
        Assert.Empty(wrong.Select(u => $"{u.From} uses {u.To}").Distinct());
    }

    // A source plugs into the kernel by its numbers: nothing of the season names it, and it names no other.
    [Fact]
    public void No_room_of_the_season_knows_a_source()
    {
        const string season = "DesignSearch.Season";
        var sources = House.Types.Where(t => t.FullName.StartsWith(season + ".", StringComparison.Ordinal) && t.GetTypeDependencies().Any(d => d.FullName == season + ".Sources.SourceNumbers")
            && t.Name.EndsWith("Numbers", StringComparison.Ordinal) && t.Namespace.FullName != season + ".Sources").Select(t => t.Namespace.FullName).Distinct().ToList();
        Assert.True(sources.Count >= 2, "sources: " + string.Join(", ", sources));
        var wrong = sources.SelectMany(own => Uses(season, own + ".").Where(u => !u.From.StartsWith(own + ".", StringComparison.Ordinal)));
        Assert.Empty(wrong.Select(u => $"{u.From} uses {u.To}").Distinct());
    }

    private static string? RoomOf(string type)
    {
        var parts = type.Split('.');
        return parts.Length > 3 ? parts[2] : null;
    }

    private static IEnumerable<(string From, string To)> Uses(string room, string others) =>
        from type in House.Types
        where type.FullName.StartsWith(room + ".", StringComparison.Ordinal)
        from target in type.GetTypeDependencies()
        where target.FullName.StartsWith(others, StringComparison.Ordinal)
        select (type.FullName, target.FullName);

    private static IEnumerable<string> Folders(string project, string below) => Directory.EnumerateDirectories(Repository.At("src", project, below))
        .Select(f => Path.GetFileName(f)).Where(f => f is not ("bin" or "obj"));
}
