using System.Diagnostics;
using System.Globalization;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Tests;

/// <summary>
/// NSGA-II of the DEAP library in a process of its own. It writes a point a line and reads "objective objective violation" back; what
/// breaks a limit ranks behind everything else, by how much it breaks it. Every call counts.
/// </summary>
public static class OutsideNsga2
{
    private const string Program = """
        import random, sys
        from deap import base, creator, tools
        seed, most, size = (int(w) for w in sys.argv[1:4])
        levels = [int(w) for w in sys.argv[4:]]
        random.seed(seed)
        creator.create("Fit", base.Fitness, weights=(-1.0, -1.0))
        creator.create("One", list, fitness=creator.Fit)
        n, left = len(levels), most
        def judge(group):
            global left
            for one in group:
                if left == 0:
                    sys.exit()
                left -= 1
                print(*one, flush=True)
                f1, f2, miss = (float(w) for w in sys.stdin.readline().split())
                one.fitness.values = (f1, f2) if miss <= 0 else (1e6 * (1 + miss), 1e6 * (1 + miss))
        people = [creator.One(random.randrange(k) for k in levels) for _ in range(size)]
        judge(people)
        people = tools.selNSGA2(people, size)
        while True:
            young = [creator.One(one) for one in tools.selTournamentDCD(people, size)]
            for a, b in zip(young[::2], young[1::2]):
                if random.random() < 0.9:
                    tools.cxUniform(a, b, 0.5)
            for one in young:
                tools.mutUniformInt(one, 0, [k - 1 for k in levels], 1.0 / n)
            judge(young)
            people = tools.selNSGA2(people + young, size)
        """;

    /// <summary>Runs it on a problem whose variables all have levels.</summary>
    /// <returns>Objectives of the points that meet every limit, in order; null with the reason where the library is missing.</returns>
    public static (List<double[]>? Objectives, string Missing) Run(IProblem problem, int seed, int evaluations, int population)
    {
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(Program);
        foreach (var number in (int[])[seed, evaluations, population, .. problem.Variables.Select(v => v.Levels)])
            start.ArgumentList.Add(number.ToString(CultureInfo.InvariantCulture));
        try
        {
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var found = new List<double[]>();
            var asked = 0;
            var space = new SearchSpace(problem.Variables);
            while (process.StandardOutput.ReadLine() is { } line)
            {
                double[] point = [.. line.Split(' ').Select(w => double.Parse(w, CultureInfo.InvariantCulture))];
                space.Canonicalise(point);
                var answer = new Evaluation[1];
                problem.Evaluate([point], answer);
                asked++;
                if (answer[0].TotalViolation == 0)
                    found.Add(answer[0].Objectives);
                process.StandardInput.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{answer[0].Objectives[0]:R} {answer[0].Objectives[1]:R} {answer[0].TotalViolation:R}"));
                process.StandardInput.Flush();
            }

            process.WaitForExit();
            return asked == evaluations ? (found, "") : (null, "python3-deap is not installed or failed: " + errors.Result.Trim().Split('\n')[^1]);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return (null, "there is no /usr/bin/python3");
        }
    }
}
