using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;

namespace DesignSearch.Reporting.Tests;

/// <summary>A weighing made up for tests of the report; its figures are invented.</summary>
internal static class InventedWeighing
{
    public static Weighing Of(IReadOnlyList<JudgedLayout> ranking, Picks picks, JudgedLayout bare)
    {
        var chosen = new[] { picks.First, picks.CheapestThatHolds, picks.BestValue, picks.MostProtection }.OfType<int>().Distinct().Select(r => ranking[r - 1]).ToList();
        return new()
        {
            UnseenFrom = "Thirty invented winters.",
            Picks = [.. chosen.Select(l => new PickWeighing(l.Rank, Unseen(l), Swaps(), Doubts(l), Week(l), WhatIfs(l)))],
            Comparisons =
            [
                new("Collector: none, fixed or turned?", [new("none", WayOf(bare), ""), new("fixed", null, "fails budget: it costs 7000 of 6000")], "Only none passes."),
                new("Night cover: with or without?", [.. chosen.Take(1).Select(l => new Way("with", WayOf(l), "")), new("without", WayOf(bare), "")], "It pays: without it the rest costs 300 crowns more."),
            ],
            Turning = new(4, 310, 290, 0.3, 420, 1400, 380, "4 m² turned bring 310 kWh, fixed 290; 0.3 m² more fixed do the same."),
            Purchases = [new(0, 0, bare.Title, 0, bare.FrostDegreeHoursKh, bare.WorstFrostHours, 0), .. chosen.Take(1).Select(l => new Purchase(500, l.Rank, l.Title, l.BuildPrice, l.FrostDegreeHoursKh, l.WorstFrostHours, bare.FrostDegreeHoursKh - l.FrostDegreeHoursKh))],
            PurchaseStep = 100,
            Stages = [.. chosen.Take(1).Select(l => new Stage(1, "Invented night cover", l.BuildPrice, l.BuildPrice, l.FrostDegreeHoursKh, l.WorstFrostHours, l.LowestAirC, l.StandbyKwh, l.Plants, ""))],
            CheckCosts = [.. chosen.Take(1).Select(l => new CheckCost("floor for tank and barrels", "8 barrels", l.LifeCost - 50, 50, "It takes 4 of 3 m²."))],
            Miss = null,
        };
    }

    private static UnseenWinters Unseen(JudgedLayout layout) => new()
    {
        Count = 30,
        Held = layout.Holds ? 29 : 3,
        HeldAtLeast = layout.Holds ? 0.83 : 0.03,
        HeldAtMost = layout.Holds ? 0.99 : 0.26,
        BareHeld = 0,
        LowestAirC = layout.LowestAirC - 1,
        WorstHour = new(2002, 1, 17, 6, 0, 0),
        OutsideThenC = -18.3,
        WorstFrostHours = layout.WorstFrostHours + 2,
        FrostDegreeHoursKh = layout.FrostDegreeHoursKh + 1.5,
        ChosenFrostDegreeHoursKh = layout.FrostDegreeHoursKh,
        LeastStandbyKwh = 120,
        MeanStandbyKwh = 310,
        MostStandbyKwh = 590,
        ChosenStandbyKwh = 280,
        Sentence = "It held in most of 30 winters.",
        Flattery = "The chosen winters flattered it by 30 kWh.",
    };

    private static IReadOnlyList<Swap> Swaps() =>
    [
        new("cover drawn at night", "invented screen", "none", -300, 450.5m, 812.4, 214, 160, false, ""),
        new("tank", "invented tank", "invented larger tank", 210, 190, 0, 0, -12, false, "floor for tank and barrels"),
    ];

    private static IReadOnlyList<WhatIf> WhatIfs(JudgedLayout layout) =>
    [
        new("the hard winter as it is", -18.3, layout.LowestAirC, layout.WorstFrostHours, Mishap.None),
        new("its cold week goes down to -20 °C", -20, layout.LowestAirC - 1.3, layout.WorstFrostHours + 5, Mishap.None),
        new("the mains fail for 12 hours in its coldest night", -18.3, layout.LowestAirC - 6.2, layout.WorstFrostHours + 9, Mishap.PowerCut),
    ];

    private static IReadOnlyList<Doubt> Doubts(JudgedLayout layout) =>
    [
        new("the cover loses a fifth more", false, 12, 1.4, 460, layout.LifeCost + 300, "It no longer holds: 12 frost hours in the worst winter."),
        new("parts cost 30 % more", layout.Holds, layout.WorstFrostHours, layout.LowestAirC, layout.StandbyKwh, layout.LifeCost + 700, "It stays the cheapest."),
    ];

    // A week of frost at night and sun by day.
    private static Week Week(JudgedLayout layout) => new("hard", new(2002, 1, 12), [.. Enumerable.Range(0, 168).Select(h =>
    {
        var day = Math.Sin((h - 8) * Math.PI / 12);
        return new WeekHour(Math.Round(-10 + 6 * day, 2), Math.Round(Math.Max(layout.LowestAirC, 6 * day), 2), Math.Round(-7 + 9 * day, 2), layout.CollectorAreaM2 > 0 ? 24 + 4 * day : double.NaN, Math.Round(Math.Max(0, 400 * day)), day > 0.5 ? 0.8 : 0, layout.StandbyKwh > 0 && day < -0.5 ? 900 : 0);
    })]);

    private static WayLayout WayOf(JudgedLayout l) => new(l.Title, l.Holds, l.BuildPrice, l.LifeCost, l.FrostDegreeHoursKh, l.WorstFrostHours, l.StandbyKwh, l.CollectorAreaM2);
}
