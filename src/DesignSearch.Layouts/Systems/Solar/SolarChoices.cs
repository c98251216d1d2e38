using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What can be chosen of a solar collector and all that goes with it.</summary>
public static class SolarChoices
{
    // The low winter sun wants a collector some 15° steeper than the latitude, told in steps of 5° (common practice, no source).
    private const double SteeperThanLatitudeDeg = 15;
    private const double TiltStepDeg = 5;
    private const double UprightDeg = 90;
    private const double SouthDeg = 180;

    /// <summary>The collector; without it there is nothing of the rest.</summary>
    public static PartChoice<Collector> Collector { get; } = new("collector", "collector", Parts.Solar.Collector.Definition)
    {
        NamesTheLayout = true,
        ComesWith = SolarWords.ComesWith,
    };

    /// <summary>Number of collectors.</summary>
    public static NumberChoice CollectorCount { get; } = new("collector_count", "number of collectors", "pieces", 1, 40)
    {
        Standard = 2,
        Tried = [1, 2, 3, 4],
        Whole = true,
        CountsParts = true,
        Under = Collector,
    };

    /// <summary>What carries them.</summary>
    public static PartChoice<CollectorMount> Mount { get; } =
        new("mount", "mount", CollectorMount.Definition) { MayBeNone = false, NamesTheLayout = true, Under = Collector };

    /// <summary>Tilt in the middle position [°], 0 flat to 90 upright.</summary>
    public static NumberChoice TiltDeg { get; } = new("tilt_deg", "tilt of the collector", "° from flat", 0, UprightDeg)
    {
        StandardAt = ground => Math.Clamp(
            Math.Round((Math.Abs(ground.LatitudeDeg) + SteeperThanLatitudeDeg) / TiltStepDeg) * TiltStepDeg, 0, UprightDeg),
        Tried = [45, 60, 75],
        Under = Collector,
    };

    /// <summary>Direction in the middle position, clockwise from true north [°].</summary>
    public static NumberChoice AzimuthDeg { get; } = new(
        "azimuth_deg", "direction the collector faces", "° clockwise from true north", 0, 359)
    {
        StandardAt = ground => ground.LatitudeDeg >= 0 ? SouthDeg : 0,
        Under = Collector,
    };

    /// <summary>Turn to either side of the middle [°].</summary>
    public static NumberChoice LimitDeg { get; } = new("limit_deg", "turn to either side", "°", 5, 90)
    {
        Standard = 30,
        Tried = [20, 30, 45],
        Under = Collector,
        Also = choices => choices.Get(Mount) is { } mount && mount.Turning != TurningKind.Fixed,
    };

    /// <summary>Timer of a mount with two positions [h].</summary>
    public static NumberChoice SwitchHours { get; } = new("switch_hours", "timer from dawn to the afternoon position", "h", 2, 9)
    {
        Standard = SolarDials.UsualSwitchHours,
        Tried = [4.5, SolarDials.UsualSwitchHours],
        Under = Collector,
        Also = choices => choices.Get(Mount)?.Turning == TurningKind.TwoPosition,
    };

    /// <summary>Steps of a stepping mount.</summary>
    public static NumberChoice Steps { get; } = new("steps", "steps of a stepping mount through the day", "steps", 3, 15)
    {
        Standard = SolarDials.UsualSteps,
        Tried = [SolarDials.UsualSteps],
        Whole = true,
        Under = Collector,
        Also = choices => choices.Get(Mount)?.Turning == TurningKind.Stepped,
    };

    /// <summary>Drive of the mount.</summary>
    public static PartChoice<Drive> Drive { get; } =
        new("drive", "drive of the mount", Parts.Solar.Drive.Definition) { MayBeNone = false, Under = Collector, Also = IsDriven };

    /// <summary>Seal of the turning shaft.</summary>
    public static PartChoice<SmallPart> ShaftSeal { get; } = new("shaft_seal", "seal of the turning shaft", SmallPart.Definition)
    {
        Role = SmallPartRole.ShaftSeal,
        MayBeNone = false,
        Under = Collector,
        Also = IsDriven,
    };

    /// <summary>How the collector is kept from freezing.</summary>
    public static PartChoice<FreezeProtection> Protection { get; } = new(
        "freeze_protection", "protection of the collector from freezing", FreezeProtection.Definition)
    {
        MayBeNone = false,
        Under = Collector,
    };

    /// <summary>The tank.</summary>
    public static PartChoice<Tank> Tank { get; } =
        new("tank", "tank", Parts.Solar.Tank.Definition) { MayBeNone = false, NamesTheLayout = true, Under = Collector };

    /// <summary>Tanks side by side.</summary>
    public static NumberChoice TankCount { get; } =
        new("tank_count", "number of tanks side by side", "pieces", 1, 6) { Standard = 1, Tried = [1], Whole = true, Under = Collector };

    /// <summary>Insulation round the tank.</summary>
    public static PartChoice<TankJacket> Jacket { get; } =
        new("tank_jacket", "insulation round the tank", TankJacket.Definition) { Under = Collector };

    /// <summary>The long pipe.</summary>
    public static PartChoice<Pipe> Pipe { get; } =
        new("pipe", "pipe between collector and tank", Parts.Piping.Pipe.Definition) { MayBeNone = false, Under = Collector };

    /// <summary>Its insulation.</summary>
    public static PartChoice<PipeInsulation> Insulation { get; } =
        new("pipe_insulation", "insulation of the pipe", PipeInsulation.Definition) { Under = Collector };

    /// <summary>The pump of the loop.</summary>
    public static PartChoice<Pump> LoopPump { get; } = new("pump", "pump", Pump.Definition) { MayBeNone = false, Under = Collector };

    /// <summary>Flow that is wanted [L/(min·m²)].</summary>
    public static NumberChoice FlowLPerMinM2 { get; } = new(
        "flow_l_per_min_m2", "flow through each square metre of collector", "L/(min·m²)", 0.2, 2)
    {
        Standard = 0.9,
        Tried = [0.9],
        Under = Collector,
    };

    /// <summary>Difference above which the pump starts [K].</summary>
    public static NumberChoice StartDifferenceK { get; } =
        new("start_difference_k", "pump starts above this difference", "K", 2, 20) { Standard = 8, Tried = [8], Under = Collector };

    /// <summary>Difference below which the pump stops [K].</summary>
    public static NumberChoice StopDifferenceK { get; } =
        new("stop_difference_k", "pump stops below this difference", "K", 0.5, 10) { Standard = 3, Tried = [3], Under = Collector };

    /// <summary>The heat release.</summary>
    public static PartChoice<HeatRelease> Release { get; } =
        new("release", "heat release from the tank", HeatRelease.Definition) { MayBeNone = false, Under = Collector };

    /// <summary>Pieces, or metres, of it.</summary>
    public static NumberChoice ReleaseCount { get; } = new("release_count", "how much of it", "pieces or m", 1, 200)
    {
        Standard = 1,
        Tried = [1, 2],
        Whole = true,
        Under = Collector,
    };

    /// <summary>Its thermostat [°C].</summary>
    public static NumberChoice ReleaseSetC { get; } = new("release_set_c", "thermostat of the heat release", "°C", 0, 25)
    {
        Standard = 3,
        Tried = [3],
        AboveLimit = true,
        Under = Collector,
    };

    /// <summary>Band of that thermostat [K].</summary>
    public static NumberChoice ReleaseBandK { get; } =
        new("release_band_k", "band of that thermostat", "K", 0.2, 6) { Standard = 1, Tried = [1], Under = Collector };

    /// <summary>Tank's top over that thermostat's set point below which the release stops [K].</summary>
    public static NumberChoice ReleaseStopK { get; } = new("release_stop_k", "tank's top over that thermostat at which the release stops", "K", -10, 10)
    {
        Standard = 1,
        Tried = [1],
        Under = Collector,
    };

    /// <summary>Air above which its fan coil brings the house's heat into the tank [°C]; 0 never.</summary>
    public static NumberChoice GatherAboveC { get; } = new("gather_above_c", "air above which the heat release brings day heat into the tank, 0 never", "°C", 0, 25)
    {
        Standard = 0,
        Tried = [0],
        Under = Collector,
    };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } =
    [
        Collector, CollectorCount, Mount, TiltDeg, AzimuthDeg, LimitDeg, SwitchHours, Steps, Drive, ShaftSeal, Protection, Tank, TankCount,
        Jacket, Pipe, Insulation, LoopPump, FlowLPerMinM2, StartDifferenceK, StopDifferenceK, Release, ReleaseCount, ReleaseSetC, ReleaseBandK, ReleaseStopK,
        GatherAboveC,
    ];

    private static bool IsDriven(IChoices choices) => choices.Get(Mount) is { NeedsDrive: true };
}
