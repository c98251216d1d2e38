using System.Reflection;
using DesignSearch.Testing;
using Xunit;
using Xunit.Sdk;

namespace DesignSearch.Cli.Tests;

/// <summary>docs/validation.md says of each row what it proves; it does not prove what nothing runs.</summary>
public sealed class ValidationPageTests
{
    private const int RunsIn = 7;

    private static IEnumerable<string[]> Rows => File.ReadLines(Repository.At("docs", "validation.md"))
        .SkipWhile(l => !l.StartsWith("| ---", StringComparison.Ordinal)).Skip(1).Select(l => l.Split('|', StringSplitOptions.TrimEntries));

    [Fact]
    public void What_a_row_proves_runs()
    {
        var wrong = Rows.Where(r => r.Length != RunsIn + 3 || !Runs(r[RunsIn])).Select(r => r.ElementAtOrDefault(1) + ": " + r.ElementAtOrDefault(RunsIn)).ToList();
        Assert.True(wrong.Count == 0, "Rows that prove nothing that runs:\n" + string.Join('\n', wrong));
    }

    [Fact]
    public void What_is_not_a_number_is_neither_met_nor_missed()
    {
        Assert.Throws<TrueException>(() => Validation.Equal("never", "", 1, double.NaN, 1, "", ""));
        Assert.Throws<TrueException>(() => Validation.Within("never", "", double.NaN, 1, 1, "", ""));
        Assert.Throws<TrueException>(() => Validation.Missed("never", "", 0, 1, double.NaN, "", ""));
    }

    private static bool Runs(string name)
    {
        if (name == "reference" || (name.Contains('/', StringComparison.Ordinal) && File.Exists(Repository.At(name))))
            return true;
        var parts = name.Split('.');
        return parts.Length <= 2 && BuiltCode.Types.Where(t => t.Name.Split('`')[0] == parts[0])
            .SelectMany(t => t.GetMembers(BuiltCode.Declared))
            .Any(m => (parts.Length == 1 || m.Name == parts[1]) && IsUsed(m));
    }

    // Of a constant the built code keeps the figure alone; CallersTests looks for its name.
    private static bool IsUsed(MemberInfo member) => member is FieldInfo { IsLiteral: true }
        || BuiltCode.UsersOf(member is PropertyInfo { GetMethod: { } read } ? read : member).Any();
}
