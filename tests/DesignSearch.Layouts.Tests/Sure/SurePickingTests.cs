using System.Globalization;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>The first choice against every layout there is, asked one by one.</summary>
public sealed class SurePickingTests(SureSample sample) : IClassFixture<SureSample>
{
    private const int MayFail = 4;

    [Fact]
    public void The_first_choice_is_the_cheapest_of_all_that_is_sure_enough()
    {
        var scenario = sample.All.Scenario;
        var draws = new DoubtDraws(scenario, DesignWinters.Drawn(scenario, scenario.Search.UnseenWinters, scenario.Climate.Seed + 2_000_003), scenario.Climate.Seed + 2_000_003, 2);
        var holders = sample.Holders;
        // One by one from the cheapest on, none left out, until the surer one is met; what is dearer has no say.
        var asked = new List<(double Cost, int Failed)>();
        foreach (var (layout, cost) in holders)
        {
            asked.Add((cost, draws.All(LayoutBuilder.Build(scenario, layout), 2).Count(o => o.FrostHours > 0)));
            if (asked.Find(a => a.Failed <= MayFail) is { Cost: > 0 } sure && asked[^1].Failed <= sure.Failed / 3)
                break;
        }

        Assert.True(asked[0].Failed > MayFail, "The cheapest that holds is to be unsure here.");
        var cheapest = asked.First(a => a.Failed <= MayFail);
        Assert.Equal(cheapest.Cost, holders.Single(h => h.Layout.Equals(sample.Found!.First)).Cost, 0.005);
        Assert.True(sample.Found!.IsSure);
        Assert.True(asked[^1].Failed <= cheapest.Failed / 3);
        Assert.Equal(asked[^1].Cost, holders.Single(h => h.Layout.Equals(sample.Found.Surer ?? sample.Found.First)).Cost, 0.005);
    }

    [Fact]
    public void The_sentences_say_what_less_sureness_saves()
    {
        var (judged, picks) = (sample.Judged, sample.Judged.Picks);
        var (first, cheapest) = (judged.Ranking[picks.First!.Value - 1], judged.Ranking[picks.CheapestThatHolds!.Value - 1]);
        Assert.True(first.LifeCost > cheapest.LifeCost);
        Assert.True(first.Chance!.Held > cheapest.Chance!.Held);
        Assert.InRange(first.Chance.Held / 40.0, first.Chance.AtLeast, first.Chance.AtMost);
        Assert.Contains(judged.Sureness, s => s.Contains(string.Create(CultureInfo.InvariantCulture, $"it held in {first.Chance.Held} of 40 winters"), StringComparison.Ordinal));
        Assert.Contains(judged.Sureness, s => s.StartsWith("Less sure is cheaper", StringComparison.Ordinal)
            && s.Contains(string.Create(CultureInfo.InvariantCulture, $"{first.LifeCost - cheapest.LifeCost:0} crowns less"), StringComparison.Ordinal)
            && s.Contains(string.Create(CultureInfo.InvariantCulture, $"held in {cheapest.Chance.Held} of 40"), StringComparison.Ordinal));
        Assert.Contains("in every design winter and in at least 90 of 100 others", judged.Answer, StringComparison.Ordinal);
        Assert.Contains(first.Title, judged.Answer, StringComparison.Ordinal);
        Assert.True(judged.Drawn.Count >= 4 && judged.Drawn.All(d => d.Range.Length > 0 && d.Why.Length > 0));
    }

    // What is proved of the cheapest is never said of a dearer one, and a dearer one is never called the lowest without saying in what.
    [Fact]
    public void What_is_said_of_the_cheapest_is_not_said_of_a_surer_one()
    {
        var (ranking, picks, scenario) = (sample.Judged.Ranking, sample.Judged.Picks, sample.All.Scenario);
        var (first, cheapest) = (ranking[picks.First!.Value - 1], ranking[picks.CheapestThatHolds!.Value - 1]);
        var proved = Certifier.Exact(cheapest.LifeCost);
        var beside = proved.Beside(cheapest, first, "crowns", isExact: true).Sentence;
        Assert.StartsWith(proved.Sentence, beside, StringComparison.Ordinal);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"said of no. {cheapest.Rank}, the cheapest"), beside, StringComparison.Ordinal);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"costs {first.LifeCost - cheapest.LifeCost:0} crowns more."), beside, StringComparison.Ordinal);
        Assert.Contains("not proved", proved.Beside(cheapest, first, "crowns", isExact: false).Sentence, StringComparison.Ordinal);
        Assert.Equal(proved, proved.Beside(cheapest, cheapest, "crowns", isExact: true));
        string Answer(Chance? chance, Picks chosen) => AnswerWords.Answer(
            scenario, sample.Judged.BareHouse, [.. ranking.Select(l => l.Rank == first.Rank ? l with { Chance = chance } : l)], chosen, isExact: true);
        Assert.Contains("and in at least 90 of 100 others at the lowest whole-life cost", Answer(Chance.Counted(36, 40), picks), StringComparison.Ordinal);
        var unsure = Answer(Chance.Counted(35, 40), picks);
        Assert.DoesNotContain("lowest", unsure, StringComparison.Ordinal);
        Assert.Contains("more surely in others than the cheapest that does", unsure, StringComparison.Ordinal);
        Assert.Contains("at the lowest whole-life cost", Answer(null, picks with { First = picks.CheapestThatHolds }), StringComparison.Ordinal);
    }

    [Fact]
    public void From_what_holds_only_by_a_hair_the_sure_one_is_found_beside_it()
    {
        // The search met nothing dearer than the cheapest that holds: what is sure lies one choice away.
        var book = new TrialBook(sample.All.Assessor, 2);
        var found = new SurePicking(book, 2, UnseenJudging.Winters(sample.All.Scenario)).Of([sample.Holders[0].Layout], isExact: false);
        Assert.True(found.IsSure);
        Assert.InRange(book.Of(found.First).Figures.LifeCost, book.Of(sample.Found!.First).Figures.LifeCost, 1.05m * book.Of(sample.Found.First).Figures.LifeCost);
        Assert.True(found.Chances[found.MostProtection].Held >= found.Chances[found.First].Held);
    }

    [Fact]
    public void The_number_of_threads_changes_nothing()
    {
        var alone = sample.Pick(true, 1)!;
        Assert.Equal(sample.Found!.First, alone.First);
        Assert.Equal(sample.Found.MostProtection, alone.MostProtection);
        Assert.Equal(sample.Found.Chances.OrderBy(c => c.Key.ToString(), StringComparer.Ordinal), alone.Chances.OrderBy(c => c.Key.ToString(), StringComparer.Ordinal));
    }

    [Fact]
    public void Each_figure_is_drawn_through_its_whole_range_and_the_same_for_all()
    {
        var scenario = sample.All.Scenario;
        var bare = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices));
        var (draws, again, other) = (Draws(5, 2), Draws(5, 1), Draws(6, 2));
        DoubtDraws Draws(ulong seed, int threads) => new(scenario, DesignWinters.Drawn(scenario, 20, seed), seed, threads);
        var outcomes = draws.All(bare, 2);
        Assert.Equal(outcomes, again.All(bare, 1));
        Assert.NotEqual(outcomes, other.All(bare, 1));
        // With nothing in doubt the same winters are neither always colder nor always warmer inside.
        var plain = new LayoutAssessor(scenario, WinterSet.Of(scenario, DesignWinters.Drawn(scenario, 20, 5).Select(w => (w, 0.05)))).Simulate([bare])[0];
        Assert.InRange(plain.Zip(outcomes).Count(o => o.First.LowestAirC < o.Second.LowestAirC), 3, 17);
        Assert.True(plain.Zip(outcomes).Average(o => Math.Abs(o.First.LowestAirC - o.Second.LowestAirC)) > 0.2);
    }

    // A house that never freezes needs nothing; a scenario that asks for none gets none.
    [Fact]
    public void Who_does_not_ask_is_not_answered()
    {
        using var silent = new SureSample(0, 4);
        Assert.Null(silent.Found);
        Assert.Empty(silent.Judged.Sureness);
        Assert.Equal(silent.Judged.Picks.CheapestThatHolds, silent.Judged.Picks.First);
        Assert.DoesNotContain("of 100 others", silent.Judged.Answer, StringComparison.Ordinal);
    }
}
