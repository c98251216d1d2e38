using System.Text.RegularExpressions;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>A physical constant is typed once, in <c>DesignSearch.Physics</c>, with its source.</summary>
public sealed partial class ConstantsRuleTests
{
    [Fact]
    public void No_file_types_a_physical_constant_again()
    {
        var again = SourceFiles().Where(f => !f.StartsWith("src/DesignSearch.Physics/", StringComparison.Ordinal))
            .SelectMany(f => Typed(File.ReadAllText(Repository.At(f))).Select(number => $"{f}: {number}"));
        Assert.Empty(again);
    }

    [Theory]
    [InlineData("var t = airC + 273.15;", true)]
    [InlineData("const double G = 9.80665; // g", true)]
    [InlineData("private const double Heat = 4186;", true)]
    [InlineData("var heat = 4_186.0 * kg;", true)]
    [InlineData("var s = 5.670374419e-8 * t;", true)]
    [InlineData("var s = 5.67E-8 * t;", true)]
    [InlineData("var kwh = joules / 3.6e6;", true)]
    [InlineData("var kwh = joules / 3_600_000;", true)]
    [InlineData("// σ·(Tsky + 273.15)⁴", false)]
    [InlineData("/// <summary>1361 at one astronomical unit.</summary>", false)]
    [InlineData("var n = 14186 + 41860 + 1.4186 + 0.273155;", false)]
    public void It_knows_a_constant_when_it_sees_one(string line, bool found) => Assert.Equal(found, Typed(line).Any());

    private static IEnumerable<string> SourceFiles() => Directory.EnumerateFiles(Repository.At("src"), "*.cs", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(Repository.Root, f).Replace('\\', '/'))
        .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal));

    private static IEnumerable<string> Typed(string text) => Constant().Matches(Comment().Replace(text, "")).Select(m => m.Value);

    [GeneratedRegex(@"//.*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"(?<![\w.])(273\.15|5\.670?\d*[eE]-8|9\.806?65|9\.81|4_?186(\.0)?|1_?361(\.0)?|1_?367(\.0)?|3\.6[eE]6|3_?600_?000(\.0)?)(?![\w.]|\d)")]
    private static partial Regex Constant();
}
