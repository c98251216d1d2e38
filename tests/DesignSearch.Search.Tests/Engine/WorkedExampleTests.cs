using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>The code of docs/search-engine.md.</summary>
public class WorkedExampleTests
{
    [Fact]
    public void Runs_and_is_exact()
    {
        var result = new SearchEngine(new ShelfProblem(), new SearchSettings { Seed = 7, MaxEvaluations = 500 }).Run();
        Assert.True(result.IsExact);
        Assert.All(result.Front, shelf => Assert.Equal(0, shelf.Evaluation.TotalViolation));
        Assert.Equal(9, result.Front[0].Evaluation.Objectives[0]);
        Assert.Equal(96, new SearchSpace(new ShelfProblem().Variables).Size);
    }

    [Fact]
    public void The_page_shows_this_very_code()
    {
        var page = File.ReadAllText(Repository.At("docs", "search-engine.md"));
        var code = File.ReadAllText(Repository.At("tests", "DesignSearch.Search.Tests", "Problems", "ShelfProblem.cs"));
        Assert.Contains(code[code.IndexOf("public sealed class", StringComparison.Ordinal)..].Trim(), page, StringComparison.Ordinal);
    }
}
