using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Skin;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>What to dial in on the finished installation.</summary>
internal static class SettingsWriter
{
    private const double HotC = 40;

    public static IReadOnlyList<Setting> Of(Scenario scenario, BuiltLayout built)
    {
        var settings = new List<Setting>();
        void Add(string what, string value, string reason) => settings.Add(new(what, value, reason));
        var (layout, limit) = (built.Layout, scenario.Greenhouse.FrostLimitC);
        if (scenario.Catalogue.TryFind<NightCover>(layout["night_cover"].Id, out var cover))
            Add("Night cover", cover.IsAutomatic ? "closes at dusk, opens at dawn" : "close at dusk, open after sunrise, every day", "Nearly all of the heat is lost at night; open by day it costs no light.");
        if (built.Solar is { } solar)
            Solar(solar, built, scenario, Add);
        if (built.Installation.Find<CompostNumbers>() is { } heap)
        {
            Add("Thermostat of the compost heap's pump", FormattableString.Invariant($"{heap.SetPointC:0.#} °C"), "Above the stand-by heater, so that the heap's heat goes first.");
            Add("Heap's pump rests", FormattableString.Invariant($"core below {heap.RestBelowC:0} °C"), "A heap cooled further goes cold and needs weeks to come back.");
            Add("Building the heap", "moist as a wrung-out sponge, loose enough to breathe, half a metre of cover over the pipe", "Too wet, too dry or too dense it does not heat; measure the core every week.");
        }

        if (built.Installation.Find<BenchNumbers>() is { } bench)
        {
            Add("Fleece over the bench", "close at dusk, open after sunrise, every day", "Closed it keeps the bench's warmth; by day the plants want light, and a closed fleece in the sun cooks them.");
            if (bench.PowerW > 0)
                Add("Bench's thermostat", FormattableString.Invariant($"{bench.SetPointC:0.#} °C"), FormattableString.Invariant($"Above the limit of {limit:0.#} °C, because a thermostat lags; its feeler hangs among the pots, under the fleece and off the mat."));
        }

        if (built.Installation.Heater.PowerW > 0)
            Add("Stand-by heater's thermostat", FormattableString.Invariant($"{layout["heater_set_c"].Number:0.#} °C"), FormattableString.Invariant($"Above the limit of {limit:0.#} °C, because a thermostat lags; check it with a good thermometer at plant height."));
        return settings;
    }

    private static void Solar(SolarLoop solar, BuiltLayout built, Scenario scenario, Action<string, string, string> add)
    {
        var layout = built.Layout;
        var azimuth = layout["azimuth_deg"].Number;
        add("Tilt of the collector", FormattableString.Invariant($"{layout["tilt_deg"].Number:0}° from flat"), "Steep, for the low winter sun.");
        add("Direction of the collector", FormattableString.Invariant($"{azimuth:0}° from true north, {Facing(azimuth)}"), "True north, not the compass: correct the needle by the local declination.");
        if (solar.Mount.Turning != TurningKind.Fixed)
            add("Limit switches", FormattableString.Invariant($"{solar.LimitDeg:0}° to either side of the middle"), "The switches end the turn; mechanical stops behind them take the wind.");
        if (solar.Mount.Turning == TurningKind.TwoPosition)
            add("Timer of the frame", FormattableString.Invariant($"{layout["switch_hours"].Number:0.#} h after dawn"), "Swings from the morning to the afternoon side near solar noon; the light sensor brings it home at dusk.");
        add("Pump starts", FormattableString.Invariant($"collector {layout["start_difference_k"].Number:0.#} K above the tank's bottom"), "Enough to be worth the pump's current and the cold pipe.");
        add("Pump stops", FormattableString.Invariant($"collector {layout["stop_difference_k"].Number:0.#} K above the tank's bottom"), "Well below the start, so that it does not chatter; shortest run three to five minutes.");
        add("Flow", FormattableString.Invariant($"{solar.Flow.KgPerS * 60:0.0} L/min through all collectors"), "Set with the ball valve on the return while the pump runs.");
        if (built.Installation.PipeRun.OutLossWPerK > 0 && solar.Flow.KgPerS > 0)
        {
            var lost = HotC - PipeLoss.EndC(HotC, 0, built.Installation.PipeRun.OutLossWPerK, solar.Flow.KgPerS * solar.Protection.FluidJPerKgK);
            add("Check of the warm pipe", FormattableString.Invariant($"loses about {lost:0.0} K from collector to tank at {HotC:0} °C on a day of 0 °C"), "Feel or measure both ends on a sunny day; much more means wet or missing insulation.");
        }

        add("Fill of the loop", FormattableString.Invariant($"{solar.LoopLitres:0} L in collectors and pipes, {solar.TankCount * solar.Tank.VolumeL:0} L in the tank"), solar.Protection.Method == FreezeMethod.Antifreeze ? "The loop is filled with antifreeze and stays full." : "The loop's water stands in the tank while the pump rests: leave that much room in it.");
        add("Tank's ceiling", FormattableString.Invariant($"{solar.CeilingC:0} °C"), "Above it the pump stops: tank, pipe and heat release bear no more.");
        add("Thermostat of the heat release", FormattableString.Invariant($"{layout["release_set_c"].Number:0.#} °C"), FormattableString.Invariant($"Above the limit of {scenario.Greenhouse.FrostLimitC:0.#} °C and above the stand-by heater, so that the sun's heat goes first."));
        add("Band of that thermostat", FormattableString.Invariant($"{layout["release_band_k"].Number:0.#} K"), "Wide enough that pump and fan do not start every few minutes.");
        if (solar.Mount.Turning == TurningKind.Stepped)
            add("Steps of the frame", FormattableString.Invariant($"{layout["steps"].Number:0} through the day"), "More steps gain little and wear the drive.");
        if (solar.Drive is not null && solar.Frames > 1)
            add("Order of the drives", "one after the other, ten seconds apart", "Each draws its starting current alone; the supply is laid out for that.");
        if (solar.Protection.Method != FreezeMethod.Antifreeze)
            add("Before the first frost", "watch the collector run empty", "Stop the pump and see that all water comes back; a sag in the pipe bursts it.");
        else
            add("Antifreeze", FormattableString.Invariant($"good to {solar.Protection.ProtectsToC:0} °C, tested every autumn"), "It ages; weak antifreeze freezes.");
        add("In summer", "cover the collectors or drain them and leave the vent open", "A dry collector in summer sun is the hottest thing on the place.");
    }

    private static string Facing(double azimuthDeg)
    {
        string[] names = ["faces north", "faces north-east", "faces east", "faces south-east", "faces south", "faces south-west", "faces west", "faces north-west"];
        return names[(int)Math.Round(azimuthDeg / 45) % 8];
    }
}
