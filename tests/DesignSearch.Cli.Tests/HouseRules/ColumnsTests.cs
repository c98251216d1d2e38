using System.Reflection;
using DesignSearch.Parts.Catalogues;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Every number and yes-or-no of a catalogue is read by something that decides: a figure nobody asks for misleads who wrote it.</summary>
public sealed class ColumnsTests
{
    // Each by name, with its reason.
    private static readonly Dictionary<string, string> Known = [];

    [Fact]
    public void Every_column_is_asked_for()
    {
        var dead = BuiltCode.Types.Where(t => t.IsAssignableTo(typeof(IPart)) && t is { IsAbstract: false, IsInterface: false })
            .SelectMany(t => t.GetProperties(BuiltCode.Declared).Where(p => p.GetMethod!.IsPublic && IsColumn(p) && !IsRead(p))).Select(p => $"{p.DeclaringType!.Name}.{p.Name}").ToList();
        var (more, less) = (dead.Except(Known.Keys).Order(StringComparer.Ordinal), Known.Keys.Except(dead));
        Assert.True(!more.Any(), "Columns that nothing asks for:\n" + string.Join('\n', more));
        Assert.True(!less.Any(), "No exception any more:\n" + string.Join('\n', less));
    }

    private static bool IsColumn(PropertyInfo property) =>
        property.CanWrite && !BuiltCode.IsMade(property) && (Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType) is var type
        && (type == typeof(double) || type == typeof(decimal) || type == typeof(int) || type == typeof(bool));

    // Its own record may turn it into another figure, which then must be read; a table that only shows it does not count. What is read through an
    // interface that several kinds share counts for each.
    private static bool IsRead(PropertyInfo property) => Shared(property).Prepend(property).SelectMany(p => BuiltCode.UsersOf(p.GetMethod!)).Any(user =>
    {
        var type = BuiltCode.Outer(user.DeclaringType!);
        if (type.Namespace!.StartsWith("DesignSearch.Reporting", StringComparison.Ordinal))
            return false;
        // What a part bears is asked by the checks of its states, and WaterRatingsTests weakens it.
        return type != property.DeclaringType
            || user.Name == nameof(IPart.Bears)
            // What runs on mains is offered only where there are mains: NoMainsScenarioTests.
            || user.Name == "get_" + nameof(IPart.RunsOnMains)
            || (type.GetProperties().FirstOrDefault(p => p.GetMethod == user) is { } other && other != property && IsRead(other));
    });

    private static IEnumerable<PropertyInfo> Shared(PropertyInfo property) =>
        property.DeclaringType!.GetInterfaces().Where(i => i != typeof(IPart)).Select(i => i.GetProperty(property.Name)).OfType<PropertyInfo>();
}
