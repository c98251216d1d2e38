using System.Reflection;
using DesignSearch.Testing;
using PublicApiGenerator;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>What other code may rely on, written down: a change of it has to touch these pages knowingly. Renewed with DESIGNSEARCH_WRITE_DOCS=1.</summary>
public sealed class PublicSurfaceTests
{
    private static readonly ApiGeneratorOptions Options = new() { IncludeAssemblyAttributes = false };

    public static TheoryData<string> Projects =>
        [.. Directory.EnumerateDirectories(Repository.At("src"), "DesignSearch.*").Select(f => Path.GetFileName(f)).Where(n => n != "DesignSearch.Cli").Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void The_public_surface_is_the_one_written_down(string project)
    {
        var page = Repository.At("tests", "DesignSearch.Cli.Tests", "HouseRules", "Surface", project + ".txt");
        var surface = Assembly.Load(project).GeneratePublicApi(Options).ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("DESIGNSEARCH_WRITE_DOCS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(page)!);
            File.WriteAllText(page, surface);
        }

        Assert.True(
            File.Exists(page) && File.ReadAllText(page) == surface,
            $"The public surface of {project} is not the one in tests/DesignSearch.Cli.Tests/HouseRules/Surface: run this test once with DESIGNSEARCH_WRITE_DOCS=1, and say in the changelog what moved.");
    }
}
