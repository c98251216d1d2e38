using System.Diagnostics;
using System.Globalization;
using System.Runtime.Intrinsics;

namespace DesignSearch.Benchmarks;

/// <summary>The kernel in turn with a program that times a stand-in model in C++, in one run: time per layout and winter, and per operation.</summary>
internal static class Yardstick
{
    // Operations of one step of the stand-in model, counted in its source: 231 + − ×, 12 divisions, about 45 smaller, larger and choice.
    private const double TheirOperations = 288;

    /// <summary>Races.</summary>
    /// <param name="program">The built program; it prints lines "C++ double 4 x4 … us/layout-winter".</param>
    /// <param name="rounds">Turns of each.</param>
    public static void Race(string program, int rounds)
    {
        var work = new SeasonWork(withBenches: false);
        var (operations, divisions) = work.Operations();
        (string Theirs, int Batches, int Lanes)[] forms = [.. new[] { ("double 4 x8", 2, 8), ("double 4 x4", 2, 4), ("double 4 scalars", 2, 1), ("double x8", 1, 8), ("double x4", 1, 4), ("double scalar", 1, 1) }
            .Where(f => f.Item3 < 8 || Vector512.IsHardwareAccelerated)];
        var (theirs, ours) = (forms.Select(_ => new List<double>()).ToArray(), forms.Select(_ => new List<double>()).ToArray());
        for (var round = -1; round < rounds; round++)
        {
            var lines = Told(program);
            for (var f = 0; f < forms.Length; f++)
            {
                var take = forms[f].Batches * forms[f].Lanes;
                var count = Math.Max(take, 16);
                var start = Environment.CpuUsage.UserTime;
                work.Run(count, take, forms[f].Lanes);
                if (round < 0)
                    continue;
                ours[f].Add((Environment.CpuUsage.UserTime - start).TotalMicroseconds / count);
                theirs[f].Add(lines[forms[f].Theirs]);
            }
        }

        Console.WriteLine(FormattableString.Invariant($"One step: C++ {TheirOperations} operations, 12 of them divisions; ours {operations:0}, {divisions:0} of them divisions. Microseconds per layout-winter, medians of {rounds} turns [least to most]."));
        Console.WriteLine("| C++ | ours, batches x lanes | C++ | ours | ours / C++ | ours / C++ per operation | ours, against one lane in one batch |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- |");
        for (var f = 0; f < forms.Length; f++)
        {
            var ratio = Table.Median([.. ours[f].Zip(theirs[f], (o, t) => o / t)]);
            Console.WriteLine(FormattableString.Invariant($"| {forms[f].Theirs} | {forms[f].Batches} x {forms[f].Lanes} | {Span(theirs[f])} | {Span(ours[f])} | {ratio:0.00} | {ratio * TheirOperations / operations:0.00} | {Table.Median([.. ours[^1].Zip(ours[f], (one, o) => one / o)]):0.0} |"));
        }
    }

    private static string Span(List<double> values) => FormattableString.Invariant($"{Table.Median([.. values]):0} [{values.Min():0} to {values.Max():0}]");

    private static Dictionary<string, double> Told(string program)
    {
        using var running = Process.Start(new ProcessStartInfo(program, ["12", "1"]) { RedirectStandardOutput = true })!;
        var text = running.StandardOutput.ReadToEnd();
        running.WaitForExit();
        return text.Split('\n').Where(l => l.StartsWith("C++ ", StringComparison.Ordinal) && l.Contains("us/layout-winter", StringComparison.Ordinal))
            .Select(l => l[4..l.IndexOf("us/layout-winter", StringComparison.Ordinal)].Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .ToDictionary(w => string.Join(' ', w[..^1]), w => double.Parse(w[^1], CultureInfo.InvariantCulture));
    }
}
