using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What a solar plant asks for year by year, in words. Hours are orders of magnitude, common practice, no source.</summary>
internal static class SolarUpkeepWords
{
    private static readonly Upkeep Leaks = new(
        "Look for leaks at collector, pipe, pump and tank, and compare both ends of the warm pipe.",
        "every month of the season",
        1);

    private static readonly Upkeep Stand = new(
        "Look at stand, anchors and pipe clips, and tighten what is loose.",
        "every autumn and after each storm",
        1);

    private static readonly Upkeep Glass = new(
        "Wash dust off the collectors and brush snow off them, from the ground.",
        "every autumn, and after snow",
        1);

    private static readonly Upkeep Summer = new(
        "Cover or drain the collectors, and uncover or fill them again.",
        "before and after every summer",
        1);

    private static readonly Upkeep OpenTank = new(
        "Look for scale and slime in the tank, and top up what has dried away.",
        "every autumn",
        1);

    private static readonly Upkeep RunsEmpty = new(
        "Stop the pump and watch the collector and its pipes run empty.",
        "before the first frost",
        0.5);

    private static readonly Upkeep Fluid = new("Test the antifreeze; replace it when it no longer holds.", "every autumn", 0.5);

    private static readonly Upkeep Anode = new("Look at the tank's anode; a new one before the old is gone.", "every second autumn", 0.5);

    private static readonly Upkeep Relief = new(
        "Lift the relief valves and read the pressure; a licensed person looks at them where the local code says so.",
        "every autumn",
        0.5);

    private static readonly Upkeep ByHand = new(
        "Turn the frame from stop to stop and try its bolt in each place; grease the bearing, look at stops and hoses.",
        "every autumn",
        1);

    private static readonly Upkeep Vessels = new(
        "Read the pressure cold, and test the gas of each expansion vessel with the water let off.",
        "every autumn",
        0.5);

    private static readonly Upkeep Strainers = new("Rinse the strainers.", "after the first week, then every autumn", 0.5);

    private static readonly Upkeep Valves = new(
        "Cover the light sensor, see both valves go over and the water come out at the drain point, and look at the make-up's float.",
        "every week of frost",
        2);

    public static IEnumerable<Upkeep> Of(SolarLoop solar)
    {
        yield return Leaks;
        yield return Stand;
        yield return Glass;
        yield return Summer;
        if (!solar.Tank.IsClosed)
            yield return OpenTank;
        yield return solar.StaysFull ? Fluid : RunsEmpty;
        if (solar.Tank.IsClosed)
            yield return Anode;
        if (solar.ClosedCount > 0)
        {
            yield return Relief;
            yield return Vessels;
        }

        if (solar.IsDrainedByValves)
            yield return Valves;
        if (solar.Pump.NeedsStrainer || solar.ReleasePump is { NeedsStrainer: true })
            yield return Strainers;
        if (solar.IsTurnedByHand)
            yield return ByHand;
        else if (solar.Turns)
            yield return Frames(solar.Frames);
    }

    private static Upkeep Frames(int frames) => new(
        frames == 1
            ? "Run the frame from stop to stop; try both limit switches and the bolt, grease the bearing, look at stops and hoses."
            : "Run each frame from stop to stop; try both limit switches and the bolt, grease the bearings, look at stops and hoses.",
        "every autumn",
        frames);
}
