using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using DesignSearch.Benchmarks;
using DesignSearch.Search.Engine;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var words = args.ToLookup(a => a.Split('=')[0], a => a.Split('=')[^1]);
int Word(string name, int otherwise) => words[name].Select(w => int.Parse(w, CultureInfo.InvariantCulture)).FirstOrDefault(otherwise);
int seeds = Word("seeds", 21), first = Word("first", 1), block = Word("block", 1), most = Word("most", 20_000);
if (args is ["season"] or ["planes"])
{
    // In this process: BenchmarkDotNet's own projects would not find the settings of this one.
    BenchmarkRunner.Run(args[0] == "season" ? typeof(SeasonBenchmarks) : typeof(PlaneBenchmarks), ManualConfig.Create(DefaultConfig.Instance)
        .AddJob(Job.ShortRun.WithIterationCount(9).WithToolchain(InProcessEmitToolchain.Instance)).WithArtifactsPath(Path.Combine(Path.GetTempPath(), "designsearch-benchmarks")));
    return;
}

if (args is ["race", var program, ..])
{
    Yardstick.Race(program, Word("rounds", 9));
    return;
}

if (args is ["share", ..])
{
    SearchShare.Run(args.Length > 1 && !args[1].Contains('=') ? args[1] : "runs/frost-hollow", Word("evaluations", 3000), Word("rounds", 3));
    return;
}

var only = words["only"].SelectMany(w => w.Split(',')).ToHashSet();
if (args is ["greenhouse", ..])
{
    GreenhouseCourses.Known(seeds, first, block);
    return;
}

if (args is ["large", ..])
{
    GreenhouseCourses.Large(seeds, first, most, Word("proof", 100_000), Word("boxes", 1_000_000));
    return;
}

if (args is ["single", ..])
{
    SingleCourses.Print(seeds, first, most);
    return;
}

if (args is ["memory"])
{
    Console.WriteLine("| problem | evaluations | MB held | MB at most | front | us/eval, problem included |");
    Console.WriteLine("|---|---|---|---|---|---|");
    foreach (var (name, _, make) in Roster.All.Where(p => p.Name is "catalogue" or "ZDT1" or "gear"))
        OwnCost.Memory(name, make, 1_000_000);
    return;
}

long[] marks = [.. new long[] { 500, 1000, 2000, 5000, 20_000 }.Where(m => m <= most)];

Console.WriteLine($"# ours: medians [quartiles] of {seeds} seeds from {first}, blocks of {block}; share of the exact hypervolume in %");
Console.WriteLine("| problem | " + string.Join(" | ", marks) + " | found 2000/last | to 99 % | to 99.9 % | IGD+ 2000 | spread 2000 | us/eval |");
Console.WriteLine("|" + string.Concat(Enumerable.Repeat("---|", marks.Length + 7)));
foreach (var (name, key, make) in Roster.All)
{
    if (only.Count > 0 && !only.Contains(name))
        continue;
    var front = Roster.Front(key);
    var courses = new List<Course>();
    for (var seed = first; seed < first + seeds; seed++)
    {
        var course = new Course(front, marks);
        new SearchEngine(make(), new() { Seed = (ulong)seed, MaxEvaluations = marks[^1], BlockSize = block }).Run(log: course);
        courses.Add(course);
    }

    var micros = Enumerable.Range(first, Math.Min(seeds, 3)).Select(seed => OwnCost.Micros(make, new() { Seed = (ulong)seed, MaxEvaluations = Math.Min(5000, marks[^1]), BlockSize = 1 })).ToArray();
    var cells = marks.Select(m => Table.Share([.. courses.Select(c => c.ShareAt.GetValueOrDefault(m, c.ShareAt.Values.LastOrDefault()))]));
    var found = front.Points.Count == 0 ? "-"
        : $"{Table.Median([.. courses.Select(c => (double)c.FoundAt.GetValueOrDefault(2000))]):0}/{Table.Median([.. courses.Select(c => (double)c.FoundAt.GetValueOrDefault(marks[^1]))]):0} of {front.Points.Count}";
    var distance = front.Points.Count == 0 ? "-" : FormattableString.Invariant($"{Table.Median([.. courses.Select(c => c.DistanceAt.GetValueOrDefault(2000))]):0.#####}");
    Console.WriteLine($"| {name} | {string.Join(" | ", cells)} | {found} | {Table.Count([.. courses.Select(c => c.To99)])} | {Table.Count([.. courses.Select(c => c.To999)])} | "
        + $"{distance} | {Table.Median([.. courses.Select(c => c.SpreadAt.GetValueOrDefault(2000, 1))]):0.00} | {Table.Median(micros):0.0} |");
}
