using DesignSearch.Files;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Searching;
using DesignSearch.Search;
using DesignSearch.Search.Space;

namespace DesignSearch.Runs.Checking;

/// <summary>What a run holds before it is searched.</summary>
/// <param name="Scenario">The scenario, without fault.</param>
/// <param name="SpaceSize">Distinct layouts there can be.</param>
/// <param name="SecondsPerLayout">Time of one layout on one thread.</param>
public sealed record RunCheck(Scenario Scenario, double SpaceSize, double SecondsPerLayout)
{
    private const int Block = 16;

    /// <summary>The case read back, a plain line each.</summary>
    public IReadOnlyList<string> Lines { get; private init; } = [];

    /// <summary>What can be read and may still not be meant, a sentence each.</summary>
    public IReadOnlyList<string> Doubts { get; private init; } = [];

    /// <summary>Reads a run and times a block of its layouts; writes nothing.</summary>
    /// <param name="folder">The run.</param>
    /// <param name="clocked">Runs some work and returns the seconds it takes.</param>
    /// <exception cref="InputException">With every fault.</exception>
    public static RunCheck Of(RunFolder folder, Func<Action, double> clocked)
    {
        var (read, winters) = Read(folder);
        var problem = new LayoutProblem(new LayoutAssessor(read.Scenario, winters));
        return read with { SpaceSize = SearchRun.SpaceSize(problem), SecondsPerLayout = clocked(() => Try(problem)) / Block };
    }

    /// <summary>Reads a run and simulates nothing.</summary>
    /// <param name="folder">The run.</param>
    /// <exception cref="InputException">With every fault.</exception>
    public static RunCheck Of(RunFolder folder) => Read(folder).Check;

    private static (RunCheck Check, WinterSet Winters) Read(RunFolder folder)
    {
        folder.RequireThere();
        var scenario = ScenarioReader.Read(folder.Path);
        var winters = WinterSet.Make(scenario);
        var check = new RunCheck(scenario, double.NaN, double.NaN)
        {
            Lines = ReadBack.Of(scenario, winters),
            Doubts = [.. scenario.Doubts, .. GroupedNumbers.Of(folder), .. CopiedLines.Of(folder) is { } copied ? new[] { copied } : []],
        };
        return (check, winters);
    }

    private static void Try(LayoutProblem problem)
    {
        var space = new SearchSpace(problem.Variables);
        var points = Enumerable.Range(0, Block).Select(i =>
        {
            double[] point = [.. problem.Variables.Select((v, k) => (double)((i + k) % v.Levels))];
            space.Canonicalise(point);
            return point;
        }).ToArray();
        problem.Evaluate(points, new Evaluation[Block]);
    }
}
