using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>
/// The whole course of some short searches, point by point. A journal is taken up only by the version of the program that began it, so
/// a change that moves these bytes raises the version, and is made because the bars of the peers' tests gain by it.
/// </summary>
public class PinnedRunTests
{
    public static TheoryData<string, string> Runs => new()
    {
        { "catalogue, one at a time", "7dcf20f66149a415" },
        { "catalogue, blocks of 16", "07dfb983a14471fb" },
        { "catalogue without a screen, blocks of 64", "4c07c39125ffda16" },
        { "catalogue of other figures, proved in part", "eace82bb123efebb" },
        { "gear, whole numbers", "d7d6ccd08dd49c19" },
        { "thirty reals", "2094194138e48a27" },
        { "reals, levels and kinds, three objectives, two constraints, sleepers", "280b8c8371da6b47" },
        { "nothing meets the constraints", "615c7700fc0cadf5" },
        { "until the volume stagnates", "3fa2e3297a2a3be4" },
        { "until a volume is reached", "fd0c820041a29c5f" },
        { "one objective, reals, levels and kinds", "ee7650c9c3056b97" },
        { "one objective, a constraint, nearly an equation", "f08a2b44adb7d611" },
        { "two objectives, reals and kinds, long", "7fd73fcb121d7783" },
        { "three objectives, long", "d7805ed6775e7bb0" },
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
        foreach (var (point, evaluation) in log.Entries)
            told.AppendJoin(' ', point.Concat(evaluation.Objectives).Concat(evaluation.Violations).Append(evaluation.Merit).Select(Text)).Append(evaluation.IsBound).Append('\n');
        foreach (var kept in result.Front.Concat(result.BestByMerit).Append(result.NearestMiss).OfType<EvaluatedPoint>())
            told.Append(kept.Index).Append(' ');
        told.Append(CultureInfo.InvariantCulture, $"{result.Evaluations} {result.DistinctPoints} {result.StoppedInWords} {result.IsExact} {Text(result.UnchangedInLastHalf)} {result.Proof}");
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
