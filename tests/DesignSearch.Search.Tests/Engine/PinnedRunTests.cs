using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using DesignSearch.Search.Engine;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>
/// The whole course of some short searches, point by point. A journal is taken up only by the version of the program that began it, so
/// a change that moves the catalogue's raises the version (the program's own searches have levels and kinds only); any is made because
/// the bars of the peers' tests gain by it.
/// </summary>
public class PinnedRunTests
{
    public static TheoryData<string, string> Runs => new()
    {
        { "catalogue, one at a time", "6b9b1e842d3bac40" },
        { "catalogue, blocks of 16", "1cd8447e07dcf814" },
        { "catalogue without a screen, blocks of 64", "5a13c998763e9323" },
        { "catalogue of other figures, proved in part", "4061da02bf568290" },
        { "gear, whole numbers", "05e9b8f8b3b3e43c" },
        { "thirty reals", "4d4be6129b4ae1a5" },
        { "reals, levels and kinds, three objectives, two constraints, sleepers", "28737c3b71d9bac5" },
        { "nothing meets the constraints", "55b8adbb8cdaf50e" },
        { "until the volume stagnates", "380d533dccf3e3c6" },
        { "until a volume is reached", "8377193057f7ee64" },
        { "one objective, reals, levels and kinds", "0cd3e67b02453531" },
        { "one objective, a constraint, nearly an equation", "e2e402d23a4b6eb5" },
        { "two objectives, reals and kinds, long", "56691ed804fb6d94" },
        { "a space gone through, a last block that is short", "1134d015173f4560" },
        { "a proof to the end, with sleepers", "cc694948ff48537e" },
        { "more points than the model keeps", "9f7628c4ed7a4120" },
        { "three objectives, long", "3d9a4ba97d93ef4e" },
    };

    [SkippableTheory]
    [MemberData(nameof(Runs))]
    public void It_takes_the_very_steps_it_took(string name, string digest)
    {
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Logarithm and cosine may differ in the last bit on another system.");
        var (problem, settings) = Search(name);
        Assert.Equal(digest, Digest(problem, settings));
    }

    private static (IProblem Problem, SearchSettings Settings) Search(string name) => name switch
    {
        "catalogue, one at a time" => (new CatalogueProblem(), new() { MaxEvaluations = 900, BlockSize = 1, BestByMerit = 0 }),
        "catalogue, blocks of 16" => (new CatalogueProblem(), new() { MaxEvaluations = 600, Seed = 3 }),
        "catalogue without a screen, blocks of 64" => (new CatalogueProblem(77, screened: false), new() { MaxEvaluations = 640, BlockSize = 64 }),
        "catalogue of other figures, proved in part" => (new CatalogueProblem(777), new() { MaxEvaluations = 200, ProofSimulations = 1500 }),
        "gear, whole numbers" => (Engineering.Gear(), new() { MaxEvaluations = 700, BlockSize = 1, Seed = 5 }),
        "thirty reals" => (Continuous.MovedInside(), new() { MaxEvaluations = 900, BlockSize = 4 }),
        "reals, levels and kinds, three objectives, two constraints, sleepers" => (Mixed(0), new() { MaxEvaluations = 500, BlockSize = 2 }),
        "nothing meets the constraints" => (Mixed(100), new() { MaxEvaluations = 300, BlockSize = 8 }),
        "until the volume stagnates" => (Mixed(0), new() { MaxEvaluations = 5000, Stagnation = 0.02, StagnationEvaluations = 150, Seed = 2 }),
        "one objective, reals, levels and kinds" => (Kinds(1), new() { MaxEvaluations = 2500, BlockSize = 1, Seed = 4 }),
        "one objective, a constraint, nearly an equation" => (Narrow(), new() { MaxEvaluations = 1500, BlockSize = 4 }),
        "two objectives, reals and kinds, long" => (Kinds(2), new() { MaxEvaluations = 3000, BlockSize = 4, Seed = 6 }),
        "a space gone through, a last block that is short" => (new ShelfProblem(), new() { MaxEvaluations = 200, BlockSize = 7 }),
        "a proof to the end, with sleepers" => (new StallProblem(), new() { MaxEvaluations = 30, EnumerateUpTo = 0, ProofSimulations = 5000 }),
        "more points than the model keeps" => (Engineering.Gear(), new() { MaxEvaluations = 4500 }),
        "three objectives, long" => (Mixed(0), new() { MaxEvaluations = 2500, BlockSize = 4, Seed = 7 }),
        _ => (Engineering.Gear(), new() { MaxEvaluations = 2000, TargetHypervolume = 0.9 }),
    };

    private static FormulaProblem Mixed(double tighter) => new(
        [
            .. FormulaProblem.Reals((-2, 3), (0, 1)),
            new() { Name = "kind", Kind = VariableKind.Category, Levels = 4 },
            new() { Name = "count", Kind = VariableKind.Ordered, Levels = 9, AwakeWhen = x => x[2] != 1 },
            new() { Name = "tilt", Kind = VariableKind.Real, Low = 0, High = 90, AwakeWhen = x => x[2] == 3 },
            new() { Name = "size", Kind = VariableKind.Ordered, Levels = 30 },
        ],
        3,
        2,
        x =>
        {
            var kind = new[] { 0.3, 2, 0.9, 1.4 }[(int)x[2]];
            var tilt = (x[4] - 40) / 90;
            double[] objectives = [(x[0] * x[0]) + (kind * (1 + x[3])), ((x[0] - 1) * (x[0] - 1)) + (x[5] / 10) + (tilt * tilt), (x[1] * kind) + (5 / (1 + x[5]))];
            return (objectives, [Math.Max(0, 0.5 + tighter - x[1] - (x[3] / 10)), Math.Max(0, (x[5] * kind) - 30 + tighter)]);
        });

    // The kinds each want other reals, so that steps taken between members of two kinds go astray.
    private static FormulaProblem Kinds(int objectives) => new(
        [.. FormulaProblem.Reals((-5, 5), (-5, 5), (0, 100)), new() { Name = "kind", Kind = VariableKind.Category, Levels = 5 }, new() { Name = "count", Kind = VariableKind.Ordered, Levels = 200 }],
        objectives,
        0,
        x =>
        {
            var (across, along) = (x[0] - x[3] + 2, x[1] + (0.4 * x[3]));
            var bowl = (across * across) + (along * along) + (Math.Abs(x[2] - (20 * x[3])) / 50) + (Math.Abs(x[4] - (37 * x[3])) / 90);
            return (new[] { bowl + (0.1 * x[3]), ((x[0] + x[1]) * (x[0] + x[1])) + (x[2] / 100) + (x[4] / 200) }[..objectives], []);
        });

    // A crescent of which only a thin strip is allowed.
    private static FormulaProblem Narrow() => new(
        FormulaProblem.Reals((-2, 2), (-1, 3), (0, 1)),
        1,
        1,
        x => ([((1 - x[0]) * (1 - x[0])) + (100 * (x[1] - (x[0] * x[0])) * (x[1] - (x[0] * x[0]))) + x[2]], [Math.Max(0, Math.Abs(x[0] + x[1] - 1) - 0.05)]));

    private static string Digest(IProblem problem, SearchSettings settings)
    {
        var (log, told) = (new MemoryLog(), new StringBuilder());
        var result = new SearchEngine(problem, settings).Run(new Listener(told), log);
        // The last word is always the same: a mark of earlier versions, kept so that digests from then still hold.
        foreach (var (point, evaluation) in log.Entries)
            told.AppendJoin(' ', point.Concat(evaluation.Objectives).Concat(evaluation.Violations).Append(evaluation.Merit).Select(Text)).Append("False\n");
        foreach (var kept in result.Front.Concat(result.BestByMerit).Append(result.NearestMiss).OfType<EvaluatedPoint>())
            told.Append(kept.Index).Append(' ');
        told.Append(CultureInfo.InvariantCulture, $"{result.Evaluations} {result.DistinctPoints} {result.StoppedBecause} {result.IsExact} {result.Proof}");
        foreach (var (evaluations, volume) in result.HypervolumeTrend)
            told.Append(CultureInfo.InvariantCulture, $"{evaluations}:{Text(volume)} ");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(told.ToString())))[..16];
    }

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private sealed class Listener(StringBuilder told) : IProgress<SearchProgress>
    {
        public void Report(SearchProgress value) =>
            told.Append(CultureInfo.InvariantCulture, $"{value.Evaluations} {Text(value.Fraction)} {string.Join(' ', value.BestPerObjective.Select(Text))} {Text(value.Hypervolume)} {value.FrontSize}\n");
    }
}
