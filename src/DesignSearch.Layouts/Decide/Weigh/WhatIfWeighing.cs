using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Simulates layouts again in the coldest design winter made colder, in its coldest night without current or with the night cover open, or with snow left lying.</summary>
/// <param name="book">Where the design winters are.</param>
internal sealed class WhatIfWeighing(TrialBook book)
{
    private const int WeekHours = 7 * 24;
    private const int RampHours = 24;
    private const int CutHours = 12;

    // Colder nights are asked for in steps of so many kelvin, from the first even degree at least one kelvin below the coldest design night.
    private const double StepK = 2;
    private const int Steps = 3;

    private readonly Lazy<Coldest> coldest = new(() => Find(book.Assessor.Winters));

    /// <summary>What happens to a layout, the winter as it is first.</summary>
    /// <param name="pick">The layout.</param>
    public IReadOnlyList<WhatIf> Of(Trial pick)
    {
        var (place, winter) = (coldest.Value.Place, coldest.Value.Winter);
        return
        [
            Told(WhatIfWords.AsDesigned(winter.Name), winter, pick.Outcomes[place], Mishap.None),
            .. coldest.Value.Colder.Select(w => Tried(WhatIfWords.Colder(w.AirC.Min()), w, pick, Mishap.None)),
            .. LosesCurrent(pick) ? new[] { Tried(WhatIfWords.PowerCut(CutHours), Cut(winter), pick, Mishap.PowerCut) } : [],
            .. HasCover(pick) ? new[] { Tried(WhatIfWords.CoverLeftOpen, winter with { CoverLeftOpen = [Night(winter)] }, pick, Mishap.CoverLeftOpen) } : [],
            .. SnowLeft(winter, pick),
        ];
    }

    // A battery carries on without the mains, and what takes no current misses none.
    private static bool LosesCurrent(Trial pick) => pick.Priced.Built.Supply is { Battery: null };

    private static bool HasCover(Trial pick) => pick.Priced.Built.Installation.House.NightCoverResistanceM2KPerW > 0;

    // Where it is left as a rule it is in the figures, and where none lies there is none to leave.
    private IEnumerable<WhatIf> SnowLeft(Winter winter, Trial pick)
    {
        if (book.Scenario.Site.Snow is SnowCare.None or SnowCare.Left)
            yield break;
        var snow = DesignWinters.SnowLeft(book.Scenario, winter);
        if (snow.Days(winter) > 0)
            yield return Tried(WhatIfWords.SnowLeft(snow.Days(winter)), winter with { Snow = snow }, pick, Mishap.SnowLeft);
    }

    private WhatIf Tried(string what, Winter winter, Trial pick, Mishap mishap)
    {
        var assessor = new LayoutAssessor(book.Scenario, WinterSet.Of(book.Scenario, [(winter, 1.0)]));
        return Told(what, winter, assessor.Simulate([pick.Priced.Built])[0][0], mishap);
    }

    private static WhatIf Told(string what, Winter winter, Outcome outcome, Mishap mishap) =>
        new(what, winter.AirC.Min(), outcome.LowestAirC, outcome.FrostHours, mishap);

    private static Coldest Find(WinterSet winters)
    {
        var place = Enumerable.Range(0, winters.Winters.Count).MinBy(i => winters.Winters[i].Winter.AirC.Min());
        var winter = winters.Winters[place].Winter;
        var lowest = winter.AirC.Min();
        var first = StepK * Math.Floor((lowest - 1) / StepK);
        return new(place, winter, [.. Enumerable.Range(0, Steps).Select(i => Chilled(winter, lowest - (first - (StepK * i))))]);
    }

    // The whole week is colder, air, dew point and sky alike, with a day of passage on either side.
    private static Winter Chilled(Winter winter, double byK)
    {
        var lowest = Lowest(winter);
        var week = winter.StressWeek is { } laid && lowest >= laid.First && lowest < laid.First + laid.Count
            ? laid
            : new(Math.Clamp(lowest - (WeekHours / 2), 0, winter.Hours - WeekHours), WeekHours);
        double By(int hour) => byK * Math.Clamp(1 - (Math.Max(week.First - hour, hour - (week.First + week.Count - 1)) / (double)RampHours), 0, 1);
        double[] Shifted(double[] of) => [.. of.Select((c, hour) => c - By(hour))];
        return winter with { AirC = Shifted(winter.AirC), DewPointC = Shifted(winter.DewPointC), SkyC = Shifted(winter.SkyC) };
    }

    /// <summary>The night of a winter's coldest hour, or the one before where that hour is light; no hour where it never gets dark.</summary>
    internal static HourSpan Night(Winter winter)
    {
        var coldest = Lowest(winter);
        return Forgetting.Nights(winter).LastOrDefault(n => n.First <= coldest);
    }

    private static Winter Cut(Winter winter) => winter with { PowerCuts = [About(winter, Lowest(winter), CutHours)] };

    private static HourSpan About(Winter winter, int hour, int hours) => new(Math.Clamp(hour - (hours / 2), 0, winter.Hours - hours), hours);

    private static int Lowest(Winter winter) => Array.IndexOf(winter.AirC, winter.AirC.Min());

    private sealed record Coldest(int Place, Winter Winter, IReadOnlyList<Winter> Colder);
}
