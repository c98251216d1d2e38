using System.Diagnostics;
using System.Globalization;
using DesignSearch.Benchmarks;
using DesignSearch.Search;
using DesignSearch.Search.Tests;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args is ["planes"])
{
    PlaneTimes.Run();
    return;
}

if (args is ["season", .. var rest])
{
    SeasonTimes.Run(rest is [var n] ? int.Parse(n, CultureInfo.InvariantCulture) : 9);
    return;
}

var words = args.ToLookup(a => a.Split('=')[0], a => a.Split('=')[^1]);
int Word(string name, int otherwise) => words[name].Select(w => int.Parse(w, CultureInfo.InvariantCulture)).FirstOrDefault(otherwise);
int seeds = Word("seeds", 21), first = Word("first", 1), block = Word("block", 1), most = Word("most", 20_000);
var only = words["only"].SelectMany(w => w.Split(',')).ToHashSet();
long[] marks = [.. new long[] { 500, 1000, 2000, 5000, 20_000 }.Where(m => m <= most)];

Console.WriteLine($"# ours: medians [quartiles] of {seeds} seeds from {first}, blocks of {block}; share of the exact hypervolume in %");
Console.WriteLine("| problem | " + string.Join(" | ", marks) + " | found 2000/last | to 99 % | to 99.9 % | IGD+ 2000 | us/eval |");
Console.WriteLine("|" + string.Concat(Enumerable.Repeat("---|", marks.Length + 6)));
foreach (var (name, key, make) in Roster.All)
{
    if (only.Count > 0 && !only.Contains(name))
        continue;
    var courses = new List<Course>();
    var micros = new List<double>();
    for (var seed = first; seed < first + seeds; seed++)
    {
        var course = new Course(KnownFront.All[key], marks);
        var problem = new TimedProblem(make());
        var watch = Stopwatch.StartNew();
        var log = new TimedLog(course);
        var result = new SearchEngine(problem, new() { Seed = (ulong)seed, MaxEvaluations = marks[^1], BlockSize = block }).Run(log: log);
        micros.Add((watch.Elapsed.TotalMicroseconds - problem.Micros - log.Micros) / result.Evaluations);
        courses.Add(course);
    }

    var cells = marks.Select(m => Table.Share([.. courses.Select(c => c.ShareAt.GetValueOrDefault(m, c.ShareAt.Values.LastOrDefault()))]));
    var found = $"{Table.Median([.. courses.Select(c => (double)c.FoundAt.GetValueOrDefault(2000))]):0}/{Table.Median([.. courses.Select(c => (double)c.FoundAt.GetValueOrDefault(marks[^1]))]):0}";
    Console.WriteLine($"| {name} | {string.Join(" | ", cells)} | {found} | {Table.Count([.. courses.Select(c => c.To99)])} | {Table.Count([.. courses.Select(c => c.To999)])} | "
        + $"{Table.Median([.. courses.Select(c => c.DistanceAt.GetValueOrDefault(2000))]):0.#####} | {Table.LowerQuartile([.. micros]):0.0} |");
}
