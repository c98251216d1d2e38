using DesignSearch.Climate.Tests;
using DesignSearch.Files;
using DesignSearch.Layouts.Tests;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Searching;
using DesignSearch.Runs.Simulate;
using DesignSearch.Runs.Store;
using DesignSearch.Testing;
using DesignSearch.Toughness.Tests;
using Xunit;

namespace DesignSearch.Runs.Tests;

public sealed class SearchRunTests
{
    private const string Version = "test";

    [Fact]
    public void A_search_broken_off_anywhere_and_taken_up_ends_in_the_same_bytes()
    {
        using var whole = ShortWinter.Make();
        Search(whole, resume: false);
        var journal = File.ReadAllBytes(Path.Combine(whole.Folder, "journal"));
        var lists = Names(whole);
        foreach (var share in new[] { 0.02, 0.31, 0.77, 0.999 })
        {
            using var broken = ShortWinter.Make();
            // Killed in the middle of a line: the torn tail is dropped and simulated again.
            File.WriteAllBytes(Path.Combine(broken.Folder, "journal"), journal[..(int)(journal.Length * share)]);
            Search(broken, resume: true);
            Assert.Equal(journal, File.ReadAllBytes(Path.Combine(broken.Folder, "journal")));
            Assert.Equal(lists, Names(broken));
        }
    }

    [Fact]
    public void A_journal_of_other_inputs_is_refused_and_the_difference_is_named()
    {
        using var run = ShortWinter.Make();
        Search(run, resume: false, evaluations: 48);
        File.AppendAllText(Path.Combine(run.Folder, "scenario.toml"), "\n# changed\n");
        var refused = Assert.Throws<InputException>(() => Search(run, resume: true));
        Assert.Contains(refused.Faults, f => f.Expected.Contains("'scenario.toml' has changed", StringComparison.Ordinal));
        refused = Assert.Throws<InputException>(() => Search(run, resume: true, version: "other"));
        Assert.Contains(refused.Faults, f => f.Expected.Contains("version", StringComparison.Ordinal));
    }

    [Fact]
    public void A_search_taken_up_with_a_larger_budget_ends_like_one_that_had_it_from_the_start()
    {
        using var whole = ShortWinter.Make();
        Search(whole, resume: false, evaluations: 150);
        using var longer = ShortWinter.Make();
        // 70 is not a whole number of blocks: the last one was cut short.
        Search(longer, resume: false, evaluations: 70);
        var before = File.ReadAllText(Path.Combine(longer.Folder, "journal"));
        Search(longer, resume: true, evaluations: 150);
        Assert.Equal(File.ReadAllBytes(Path.Combine(whole.Folder, "journal")), File.ReadAllBytes(Path.Combine(longer.Folder, "journal")));
        Assert.Equal(Names(whole), Names(longer));
        Assert.StartsWith(before, File.ReadAllText(Path.Combine(longer.Folder, "journal")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_taken_up_with_too_small_or_quite_another_budget_is_refused_and_why_is_said()
    {
        using var run = ShortWinter.Make();
        Search(run, resume: false, evaluations: 70);
        var refused = Assert.Throws<InputException>(() => Search(run, resume: true, evaluations: 48));
        Assert.Contains(refused.Faults, f => f.Expected.Contains("at least 70", StringComparison.Ordinal) && f.Line == 0);
        refused = Assert.Throws<InputException>(() => Search(run, resume: true, evaluations: 19_000));
        Assert.Contains(refused.Faults, f => f.Expected.Contains("now it covers every one there is", StringComparison.Ordinal));
    }

    [Fact]
    public void A_finished_folder_is_not_overwritten_without_being_told_to()
    {
        using var run = ShortWinter.Make();
        Search(run, resume: false, evaluations: 48);
        var before = File.ReadAllText(Path.Combine(run.Folder, "run.json"));
        Assert.Throws<InputException>(() => Search(run, resume: false));
        Assert.Equal(before, File.ReadAllText(Path.Combine(run.Folder, "run.json")));
        Search(run, resume: false, force: true, evaluations: 64);
        Assert.NotEqual(before, File.ReadAllText(Path.Combine(run.Folder, "run.json")));
    }

    [Fact]
    public void What_is_stored_reads_back_and_a_ranked_layout_simulates_to_its_own_figures()
    {
        // A collector in whole coils and rolls costs a little more than the sample's budget.
        using var run = new SmallScenario(("budget = 4200", "budget = 4600"));
        var stored = Search(run, resume: false, evaluations: 96);
        var back = RunStore.Load(new RunFolder(run.Folder));
        Assert.Equal(stored.Judgement.Answer, back.Judgement.Answer);
        Assert.Equal(stored.Judgement.Ranking.Select(l => (l.Slug, l.LifeCost, l.FrostDegreeHoursKh)), back.Judgement.Ranking.Select(l => (l.Slug, l.LifeCost, l.FrostDegreeHoursKh)));
        var solar = back.Judgement.Ranking.First(l => l.OtherSkyShare is not null);
        Assert.Contains(back.Judgement.Doubts, d => d.Contains(FormattableString.Invariant($"{Math.Abs(100 * solar.OtherSkyShare!.Value):0.#} % less sun falls on the collector of layout {solar.Rank}"), StringComparison.Ordinal));
        foreach (var ranked in back.Judgement.Ranking.Take(5))
        {
            var file = Path.Combine(run.Folder, "lists", FormattableString.Invariant($"{ranked.Rank}-{ranked.Slug}.toml"));
            var again = SimulateRun.Execute(new RunFolder(run.Folder), file, null, null).Layout;
            Assert.Equal((ranked.BuildPrice, ranked.LifeCost, ranked.FrostHours, ranked.FrostDegreeHoursKh, ranked.LowestAirC, ranked.StandbyKwh), (again.BuildPrice, again.LifeCost, again.FrostHours, again.FrostDegreeHoursKh, again.LowestAirC, again.StandbyKwh));
            Assert.Equal(ranked.Winters.Select(w => w.Outcome.Books), again.Winters.Select(w => w.Outcome.Books));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_search_on_a_weather_file_runs_to_its_report(bool hasSkyRadiation)
    {
        // A PVGIS file holds long-wave from the sky, a TMY3 file does not.
        using var run = new SmallScenario(("[climate]", "[climate]\nweather_file = \"w.csv\""), ("elevation_m = 640", "elevation_m = 420"), ShortWinter.Few("ranked = 6", 4));
        var sky = new MadeSky(46.3, 13.9, 1);
        File.WriteAllText(Path.Combine(run.Folder, "w.csv"), hasSkyRadiation ? sky.PvgisTypical(means: true, 0) : sky.Tmy3());
        var stored = Search(run, resume: false, evaluations: 48);
        Assert.Equal(hasSkyRadiation, stored.Scenario.WeatherShares.Any(s => s.Field == "long-wave from the sky"));
        Assert.All(stored.Scenario.WeatherShares, s => Assert.Equal(1, s.Measured + s.Modelled + s.Filled + s.Synthesised, 9));
        Assert.NotEmpty(RunStore.Load(new RunFolder(run.Folder)).Judgement.Ranking);
    }

    [Fact]
    public void A_search_that_is_stopped_keeps_the_best_so_far()
    {
        using var run = ShortWinter.Make();
        using var stop = new CancellationTokenSource();
        var stored = SearchRun.Execute(new SearchRequest(new RunFolder(run.Folder), null, null, null, 2, false, false, Version), () => TimeSpan.Zero, new StopAfter(stop, 32), stop.Token);
        Assert.True(stored.Search.IsPartial);
        Assert.Equal("stopped", stored.Search.StoppedBecause);
        Assert.InRange(stored.Search.Evaluations, 16, 128);
        Assert.NotEmpty(stored.Judgement.Ranking);
    }

    [Fact]
    public void The_finished_example_in_the_repository_is_reproduced()
    {
        var sample = RunStore.Load(new RunFolder(Repository.At("runs", "sample-finished")));
        var head = sample.Inputs.Single(i => i.File == "scenario.toml");
        Assert.Equal(head.Sha256, FileHash.Of(Repository.At("runs", "sample-finished", "scenario.toml")));
        using var run = new SmallScenario();
        var again = Search(run, resume: false);
        Assert.True(again.Search.IsExact);
        Assert.Equal(sample.Search.Evaluations, again.Search.Evaluations);
        Assert.Equal(sample.Judgement.Front, again.Judgement.Front);
        Assert.Equal(sample.Judgement.Picks, again.Judgement.Picks);
        Assert.Equal(sample.Judgement.Answer, again.Judgement.Answer);
        Assert.Equal(sample.Judgement.Ranking.Select(l => (l.Slug, l.BuildPrice, l.LifeCost, l.FrostHours)), again.Judgement.Ranking.Select(l => (l.Slug, l.BuildPrice, l.LifeCost, l.FrostHours)));
        Assert.All(sample.Judgement.Ranking.Zip(again.Judgement.Ranking), p => Assert.Equal(p.First.FrostDegreeHoursKh, p.Second.FrostDegreeHoursKh, 1e-6));
    }

    // Sixteen layouts are far from the cheapest; the proof comes to it all the same, it is ranked first, and it is the one that the whole search found.
    [Fact]
    public void The_first_answer_is_proved_and_what_the_search_missed_is_found()
    {
        var sample = RunStore.Load(new RunFolder(Repository.At("runs", "sample-finished"))).Judgement;
        using var run = new SmallScenario();
        var request = new SearchRequest(new RunFolder(run.Folder), null, 16, null, 2, false, false, Version) { Proves = true };
        SearchRun.Execute(request, () => TimeSpan.Zero, null, CancellationToken.None);
        var stored = RunStore.Load(new RunFolder(run.Folder));
        Assert.False(stored.Search.IsExact);
        Assert.True(stored.Certificate!.IsProved, stored.Certificate.Sentence);
        Assert.True(stored.Certificate.Simulations > 0 && stored.Certificate.Boxes > 0, "What was not gone through was proved by sets of layouts.");
        Assert.Equal(sample.Ranking[sample.Picks.CheapestThatHolds!.Value - 1].LifeCost, stored.Certificate.Found);
        Assert.Equal(stored.Certificate.Found, stored.Judgement.Ranking[stored.Judgement.Picks.CheapestThatHolds!.Value - 1].LifeCost);
        Assert.Null(Search(run, resume: false, force: true, evaluations: 16).Certificate);
    }

    // Sixteen layouts are bettered by the comparison of the ways; a fault in what comes after it costs the weighing and not the better layouts.
    [Fact]
    public void A_fault_while_the_result_is_weighed_keeps_what_was_found_until_then()
    {
        using var run = new SmallScenario();
        var request = new SearchRequest(new RunFolder(run.Folder), null, 16, null, 2, false, false, Version) { Proves = true };
        var fault = new FaultInTheProof();
        SearchRun.Execute(request, () => TimeSpan.Zero, fault, CancellationToken.None);
        var stored = RunStore.Load(new RunFolder(run.Folder));
        Assert.StartsWith("What the result is worth could not be weighed (InvalidOperationException: out of order).", Assert.Single(stored.Unmade), StringComparison.Ordinal);
        Assert.Null(stored.Certificate);
        Assert.Empty(stored.Weighing.Picks);
        var best = stored.Judgement.Ranking[stored.Judgement.Picks.CheapestThatHolds!.Value - 1].LifeCost;
        Assert.True(best < fault.CheapestTried - 1, FormattableString.Invariant($"{best}, of the tried {fault.CheapestTried}"));
    }

    private static StoredRun Search(SmallScenario run, bool resume, bool force = false, long? evaluations = null, string version = Version) =>
        SearchRun.Execute(new SearchRequest(new RunFolder(run.Folder), null, evaluations, null, 2, resume, force, version), () => TimeSpan.Zero, null, CancellationToken.None);

    private static List<string> Names(SmallScenario run) => [.. Directory.EnumerateFiles(Path.Combine(run.Folder, "lists")).Select(f => Path.GetFileName(f) + " " + FileHash.Of(f)).Order(StringComparer.Ordinal)];

    private sealed class FaultInTheProof : IProgress<RunProgress>
    {
        public decimal CheapestTried { get; private set; }

        public void Report(RunProgress value)
        {
            if (System.Text.RegularExpressions.Regex.Match(value.Best, "cheapest that holds costs ([0-9]+) ") is { Success: true } told)
                CheapestTried = decimal.Parse(told.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
            if (value.Best.StartsWith("proving", StringComparison.Ordinal))
                throw new InvalidOperationException("out of order");
        }
    }

    private sealed class StopAfter(CancellationTokenSource stop, long evaluations) : IProgress<RunProgress>
    {
        public void Report(RunProgress value)
        {
            if (value.Evaluations >= evaluations)
                stop.Cancel();
        }
    }
}
