using System.Text.Json;
using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Skin;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What a weighing says holds against figures worked out another way.</summary>
public sealed class WeigherTests(WeighedSample sample) : IClassFixture<WeighedSample>
{
    private static readonly JsonSerializerOptions InFull = new() { NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.AllowNamedFloatingPointLiterals };

    private Weighing Weighing => sample.Weighing;

    [Fact]
    public void Each_way_is_the_cheapest_that_a_plain_loop_over_everything_finds()
    {
        var all = sample.Tried.Where(t => t.Evaluation.TotalViolation == 0).Select(t => (Layout: sample.Space.At(t.Point), Cost: t.Evaluation.Objectives[0], Frost: t.Evaluation.Objectives[1])).ToList();
        foreach (var (question, key) in new[] { ("Lining", "lining"), ("Sealing", "sealing"), ("Water barrels", "barrel") })
        {
            var comparison = Weighing.Comparisons.Single(c => c.Question.StartsWith(question, StringComparison.Ordinal));
            foreach (var way in comparison.Ways)
            {
                var cheapest = all.Where(t => t.Frost == 0 && t.Layout.ValueOf(sample.Scenario.Choice(key)).IsNone == (way.Name == "without")).Min(t => t.Cost);
                Assert.Equal(cheapest, (double)way.Best!.LifeCost, 0.005);
                Assert.True(way.Best.Holds);
            }
        }

        var alone = Weighing.Comparisons.Single(c => c.Question.Contains("nothing else", StringComparison.Ordinal)).Ways[0].Best!;
        var least = all.Where(t => t.Layout.Awake.Where(a => a.Choice is PartChoice && !a.Value.IsNone).Select(a => a.Choice.Key).SequenceEqual(["heater"])).Min(t => t.Frost);
        Assert.Equal(least, alone.FrostDegreeHoursKh, 1e-9);
        Assert.False(alone.Holds);
    }

    [Fact]
    public void From_a_tenth_of_what_the_search_tried_the_same_ways_are_found()
    {
        var few = sample.Weigh([.. sample.Tried.Where((_, i) => i % 10 == 3)], isExact: false, threads: 2);
        foreach (var (all, found) in Weighing.Comparisons.Zip(few.Comparisons))
        {
            Assert.Equal(all.Question, found.Question);
            // What was not gone through whole is never said to be proved, and what was never carries the doubt.
            Assert.DoesNotContain("not proved", all.Answer, StringComparison.Ordinal);
            Assert.True(!found.Answer.Contains(" more over the years", StringComparison.Ordinal) || found.Answer.Contains("(searched, not proved)", StringComparison.Ordinal), found.Answer);
            Assert.Equal(all.Answer.Contains("nothing holds", StringComparison.Ordinal), found.Answer.Contains("nothing", StringComparison.Ordinal) && found.Answer.Contains("hold", StringComparison.Ordinal));
            foreach (var (a, f) in all.Ways.Zip(found.Ways).Where(w => w.First.Best is { Holds: true }))
                Assert.InRange(f.Best!.LifeCost, a.Best!.LifeCost, 1.002m * a.Best.LifeCost);
        }
    }

    [Fact]
    public void The_number_of_threads_changes_nothing() =>
        Assert.Equal(Json(Weighing), Json(sample.Weigh(sample.Tried, isExact: true, threads: 1)));

    [Fact]
    public void Unseen_winters_are_others_and_judge_by_their_own_frost()
    {
        var pick = Weighing.Picks[0];
        var unseen = pick.Unseen!;
        Assert.Equal(sample.Scenario.Search.UnseenWinters, unseen.Count);
        Assert.InRange(unseen.Held / 20.0, unseen.HeldAtLeast, unseen.HeldAtMost);
        Assert.True(unseen.HeldAtMost - unseen.HeldAtLeast > 0.05);
        Assert.Equal(unseen.Held == 20, unseen.LowestAirC >= sample.Scenario.Greenhouse.FrostLimitC);
        Assert.InRange(unseen.MeanStandbyKwh, unseen.LeastStandbyKwh, unseen.MostStandbyKwh);
        Assert.True(unseen.MostStandbyKwh > 1.5 * unseen.LeastStandbyKwh);
        // The stand-by of the chosen winters is that of the typical one, the hard one left out.
        var typical = sample.Judgement.Ranking[pick.Rank - 1].Winters.Single(w => w.Winter == "typical").Outcome.StandbyKwh;
        Assert.Equal(typical, unseen.ChosenStandbyKwh, 1e-9);
        // Some 7 kWh of 369: what is under 2 in 100 is no flattery.
        Assert.InRange(unseen.MeanStandbyKwh - typical, 1, 0.02 * typical);
        Assert.Equal("On these winters it did as well on average as on those it was chosen on.", unseen.Flattery);
        var bareNeeds = Weighing.Picks.Single(p => p.Rank == sample.Judgement.Picks.BestValue).Unseen!;
        Assert.True(bareNeeds.Held < unseen.Held);
    }

    [Fact]
    public void Stages_add_up_to_the_pick_and_the_first_already_helps()
    {
        var pick = sample.Judgement.Ranking[sample.Judgement.Picks.CheapestThatHolds!.Value - 1];
        var stages = Weighing.Stages;
        Assert.True(stages.Count > 2);
        Assert.Equal(pick.BuildPrice, stages.Sum(s => s.Price));
        Assert.Equal(pick.BuildPrice, stages[^1].PriceSoFar);
        Assert.Equal(pick.FrostDegreeHoursKh, stages[^1].FrostDegreeHoursKh, 1e-9);
        var before = (sample.Judgement.BareHouse.FrostDegreeHoursKh, double.PositiveInfinity);
        foreach (var stage in stages)
        {
            var now = (stage.FrostDegreeHoursKh, stage.FrostDegreeHoursKh < before.FrostDegreeHoursKh ? 0 : stage.StandbyKwh);
            Assert.True(now.CompareTo(before) < 0, stage.Adds);
            before = (stage.FrostDegreeHoursKh, stage.StandbyKwh);
        }
    }

    [Fact]
    public void Each_sum_buys_the_least_frost_that_the_front_has_for_it()
    {
        var front = sample.Judgement.Front.Where(r => r > 0).Select(r => sample.Judgement.Ranking[r - 1]).Append(sample.Judgement.BareHouse).ToList();
        Assert.Equal(100, Weighing.PurchaseStep);
        Assert.Equal(0, Weighing.Purchases[0].Rank);
        foreach (var (row, last) in Weighing.Purchases.Skip(1).Zip(Weighing.Purchases))
        {
            Assert.Equal(front.Where(l => l.BuildPrice <= row.UpTo).Min(l => l.FrostDegreeHoursKh), row.FrostDegreeHoursKh);
            Assert.True(row.BuildPrice > last.UpTo && row.BuildPrice <= row.UpTo);
            Assert.Equal(last.FrostDegreeHoursKh - row.FrostDegreeHoursKh, row.TakenAwayKh, 1e-9);
        }
    }

    [Fact]
    public void A_swap_is_the_other_layout_less_the_pick()
    {
        var rank = Weighing.Picks[0].Rank;
        var pick = sample.Judgement.Ranking[rank - 1];
        var swap = Weighing.Picks[0].Swaps.Single(s => s is { Choice: "lining under the cover", To: "none" });
        var other = new Judge(sample.Assessor).Of(pick.ToLayout(sample.Scenario).With(SkinChoices.Lining, ChoiceValue.None));
        Assert.Equal((other.BuildPrice - pick.BuildPrice, other.LifeCost - pick.LifeCost, other.WorstFrostHours, other.Holds), (swap.BuildPriceMore, swap.LifeCostMore, swap.WorstFrostHours, swap.Holds));
        Assert.Equal(other.StandbyKwh - pick.StandbyKwh, swap.StandbyMoreKwh, 1e-9);
    }

    [Fact]
    public void Barrels_in_a_house_that_freezes_are_warned_of_where_they_stand_and_nowhere_else()
    {
        JudgedLayout Ranked(int rank) => sample.Judgement.Ranking[rank - 1];
        var (first, step) = (Ranked(Weighing.Picks[0].Rank), Ranked(sample.Judgement.Picks.BestValue!.Value));
        Assert.True(step.LowestAirC < -10 && first.LowestAirC > 0);
        Assert.Contains("bursts a barrel", Assert.Single(step.ComeTrue).Text, StringComparison.Ordinal);
        Assert.Contains(first.Cautions, c => c.ComesTrueBelowC is not null);
        Assert.Empty(first.ComeTrue);
        // Once, at the stage that brings them.
        var told = Assert.Single(Weighing.Stages, s => s.TakeCare.Length > 0);
        Assert.Contains("arrel", told.Adds, StringComparison.Ordinal);
        Assert.Contains("bursts a barrel", told.TakeCare, StringComparison.Ordinal);
    }

    [Fact]
    public void Colder_weeks_and_a_failure_of_the_mains_chill_as_they_must()
    {
        var (heated, step) = (Weighing.Picks[0], Weighing.Picks.Single(p => p.Rank == sample.Judgement.Picks.BestValue));
        var hard = sample.Judgement.Ranking[heated.Rank - 1].Winters.Single(w => w.Winter == "hard").Outcome;
        Assert.Equal(("the hard winter as it is", -18.5, hard.LowestAirC, hard.FrostHours, Mishap.None), At(heated.WhatIfs[0]));
        Assert.All(new[] { heated, step }, p => Assert.Equal([-18.5, -20, -22, -24], p.WhatIfs.Where(w => w.Mishap == Mishap.None).Select(w => Math.Round(w.OutsideC, 9))));
        // What no heat is brought to follows the air outside, held back by ground and water; the soil holds some of it back from the first.
        var unheated = step.WhatIfs.Where(w => w.Mishap == Mishap.None).ToList();
        Assert.InRange((unheated[0].LowestAirC - unheated[3].LowestAirC) / 5.5, 0.5, 1);
        Assert.All(unheated.Zip(unheated.Skip(1)), w => Assert.True(w.Second.LowestAirC < w.First.LowestAirC && w.Second.FrostHours >= w.First.FrostHours));
        // Without mains a heated house falls by kelvins in a night; one without any current has no such row.
        var cut = heated.WhatIfs.Single(w => w.Mishap == Mishap.PowerCut);
        Assert.InRange(hard.LowestAirC - cut.LowestAirC, 2, 20);
        Assert.DoesNotContain(step.WhatIfs, w => w.Mishap is not (Mishap.None or Mishap.SnowLeft));
        // A heater makes up for a cover that stays open, as far as it can.
        var open = heated.WhatIfs.Single(w => w.Mishap == Mishap.CoverLeftOpen);
        Assert.Equal("the night cover stays open in its coldest night", open.What);
        Assert.InRange(hard.LowestAirC - open.LowestAirC, 0, hard.LowestAirC - cut.LowestAirC);

        static (string, double, double, int, Mishap) At(WhatIf w) => (w.What, w.OutsideC, w.LowestAirC, w.FrostHours, w.Mishap);
    }

    // Nothing makes up for it where no heater stands: colder than with the cover drawn, not as cold as without any.
    [Fact]
    public void A_night_cover_that_stays_open_chills_a_house_without_a_heater()
    {
        using var unheated = new WeighedSample([
            ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = \"none\""), ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = \"none\""),
            ("barrel = [\"none\", \"barrel-200-used\"]", "barrel = \"none\""), .. WeighedSample.Short,
        ]);
        var picks = unheated.Weighing.Picks.Where(p => p.WhatIfs.Any(w => w.Mishap == Mishap.CoverLeftOpen)).ToList();
        Assert.NotEmpty(picks);
        foreach (var pick in picks)
        {
            var open = pick.WhatIfs.Single(w => w.Mishap == Mishap.CoverLeftOpen);
            Assert.InRange(pick.WhatIfs[0].LowestAirC - open.LowestAirC, 0.5, 5);
            Assert.True(open.LowestAirC > open.OutsideC && open.FrostHours >= pick.WhatIfs[0].FrostHours);
        }
    }

    [Fact]
    public void The_night_in_which_it_stays_open_is_the_whole_one_of_the_coldest_hour()
    {
        foreach (var winter in sample.Assessor.Winters.Winters.Select(w => w.Winter))
        {
            var night = WhatIfWeighing.Night(winter);
            var coldest = Array.IndexOf(winter.AirC, winter.AirC.Min());
            Assert.InRange(night.Count, 14, 18);
            Assert.InRange(coldest, night.First, night.First + night.Count + 3);
            Assert.True(winter.SunZenithDeg[night.First] < 90 && winter.SunZenithDeg[night.First + night.Count - 1] < 90);
            Assert.All(Enumerable.Range(night.First + 1, night.Count - 2), h => Assert.True(winter.SunZenithDeg[h] >= 90));
        }

        var polar = sample.Assessor.Winters.Winters[0].Winter;
        var dark = polar with { SunZenithDeg = [.. polar.SunZenithDeg.Select(_ => 100.0)] };
        Assert.Equal(24, WhatIfWeighing.Night(dark).Count);
        var light = polar with { SunZenithDeg = [.. polar.SunZenithDeg.Select(_ => 80.0)] };
        Assert.Equal(0, WhatIfWeighing.Night(light).Count);
    }

    [Fact]
    public void A_winter_that_is_planned_with_a_failure_of_the_mains_is_not_told_as_the_failure()
    {
        using var cut = new WeighedSample(("budget = 4200", "budget = 5500"), ("kind = \"hard\"", "kind = \"hard\"\npower_cut_hours = 6"));
        Assert.All(cut.Weighing.Picks, p => Assert.Equal(Mishap.None, p.WhatIfs[0].Mishap));
        var powered = cut.Weighing.Picks.Where(p => p.WhatIfs.Count(w => w.Mishap != Mishap.SnowLeft) >= 5).ToList();
        Assert.NotEmpty(powered);
        Assert.All(powered, p => Assert.Equal("the mains fail for 12 hours in its coldest night", p.WhatIfs.Single(w => w.Mishap == Mishap.PowerCut).What));
    }

    [Fact]
    public void Doubts_move_the_way_they_must()
    {
        var pick = sample.Judgement.Ranking[Weighing.Picks[0].Rank - 1];
        Doubt Of(string what) => Weighing.Picks[0].Doubts.Single(d => d.What == what);
        Assert.InRange(Of("the cover loses a fifth more").StandbyKwh, 1.2 * pick.StandbyKwh, 3 * pick.StandbyKwh);
        Assert.InRange(Of("the cover loses a fifth less").StandbyKwh, 0, 0.8 * pick.StandbyKwh);
        Assert.True(Of("twice the air leaks").StandbyKwh > pick.StandbyKwh);
        Assert.True(Of("the clear sky is 5 K colder").StandbyKwh > pick.StandbyKwh);
        Assert.True(Of("the soil is dry").StandbyKwh > pick.StandbyKwh);
        var parts = pick.BuildPrice + pick.Running.ReplacementsPresentValue;
        Assert.Equal((double)(pick.LifeCost + 0.3m * parts), (double)Of("parts cost 30 % more").LifeCost, 0.01);
        Assert.Equal((double)(pick.LifeCost + 0.3m * (pick.LifeCost - parts - pick.Running.UpkeepPresentValue)), (double)Of("current costs 30 % more").LifeCost, 0.01);
    }

    [Fact]
    public void The_hardest_week_is_that_of_the_hard_winter_and_agrees_with_the_season()
    {
        var week = Weighing.Picks[0].Week;
        var (winter, _, _) = sample.Assessor.Winters.Winters.Single(w => w.Winter.Kind == WinterKind.Hard);
        var first = (int)(week.Start - winter.Start).TotalHours;
        Assert.Equal(winter.StressWeek!.Value.First, first);
        Assert.Equal(168, week.Hours.Count);
        Assert.All(Enumerable.Range(0, 168), i => Assert.Equal(winter.AirC[first + i], week.Hours[i].OutsideC, 0.006));
        Assert.True(week.Hours.Average(h => h.AirC) > week.Hours.Average(h => h.BareAirC) + 2);
        var coldest = sample.Judgement.Ranking[Weighing.Picks[0].Rank - 1].Winters.Single(w => w.Winter == "hard").Outcome;
        Assert.Equal(coldest.LowestAirC, week.Hours.Min(h => h.AirC), 0.006);
    }

    [Fact]
    public void Turning_equals_a_fixed_area_that_lies_between_what_protects_less_and_more()
    {
        var turning = Weighing.Turning;
        Assert.True(turning.TurningYieldKwh > turning.FixedYieldKwh);
        Assert.InRange(turning.ExtraFixedM2!.Value, 1e-3, 2 * turning.AreaM2!.Value);
        Assert.Equal((double)turning.TurningPartsMore!.Value / turning.ExtraFixedM2.Value, (double)turning.PaysAbovePerM2!.Value, 0.01);
        using var noTurning = new WeighedSample(("mount = [\"stand-timber\", \"two-position-rocker\"]", "mount = \"stand-timber\""), ("barrel_count = [2, 4, 6]", "barrel_count = 6"));
        Assert.StartsWith("No answer", noTurning.Weighing.Turning.Sentence, StringComparison.Ordinal);
        Assert.Null(noTurning.Weighing.Turning.ExtraFixedM2);
    }

    [Fact]
    public void Where_nothing_holds_the_miss_says_how_much_is_short_and_what_would_hold()
    {
        Assert.Null(Weighing.Miss);
        using var poor = new WeighedSample(("budget = 4200", "budget = 1100"));
        Assert.False(poor.Judgement.AnythingHolds);
        var miss = poor.Weighing.Miss!;
        var nearest = poor.Judgement.Ranking[miss.Rank - 1];
        Assert.Equal(nearest.WorstFrostHours, miss.FrostHours);
        Assert.Equal(poor.Scenario.Greenhouse.FrostLimitC - nearest.Winters.Single(w => w.Winter == miss.Winter).Outcome.LowestAirC, miss.ShortK, 1e-9);
        Assert.Equal(0, miss.Balance.Sum(f => f.Watts), 1e-6);
        Assert.Contains(miss.Balance, f => f is { Name: "leaking air", Watts: < 0 });
        // What holds at a higher budget is the cheapest to build that a search with that budget finds, or dearer by little.
        var price = sample.Judgement.Ranking.Where(l => l.Holds).Min(l => l.BuildPrice);
        Assert.Contains("instead of 1100 crowns to build", miss.Sentences[^1], StringComparison.Ordinal);
        Assert.True(price > 1100);
    }

    [Fact]
    public void A_check_that_costs_money_is_named()
    {
        // With room for two barrels only, more of them would be cheaper over the years.
        using var narrow = new WeighedSample(("store_floor_m2 = 3.0", "store_floor_m2 = 0.9"));
        var cost = Assert.Single(narrow.Weighing.CheckCosts, c => c.Check == "floor for tank and barrels");
        Assert.True(cost.Saved > 0);
        Assert.Equal(narrow.Judgement.Ranking.Where(l => l.Holds).Min(l => l.LifeCost) - cost.Saved, cost.LifeCost);
    }

    private static string Json(Weighing weighing) => JsonSerializer.Serialize(weighing, InFull);
}
