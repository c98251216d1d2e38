using System.Collections.Frozen;
using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Skin;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>Every choice there is, in the order of a scenario's [choices]: a choice may sleep only on those before it.</summary>
public static class ChoiceTable
{
    /// <summary>The choice that a scenario offers only where a bench is enough.</summary>
    public const string BenchKey = "bench";

    /// <summary>The choices.</summary>
    public static IReadOnlyList<Choice> All { get; } =
    [
        Part("night_cover", "cover drawn at night", "night-cover"),
        Part("lining", "lining under the cover", "lining"),
        Part("sealing", "sealing of gaps", "sealing"),
        Part("perimeter_board", "insulation board at the floor's edge", "perimeter-board"),
        Part("wind_break", "net or hedge against the wind", "wind-break"),
        Part("barrel", "water barrels", "barrel"),
        Number("barrel_count", "number of barrels", "pieces", 1, 40, 4, [2, 4, 6], whole: true) with { AwakeWhen = (c, _) => !c["barrel"].IsNone },
        Part("heater", "stand-by heater", "heater"),
        Number("heater_set_c", "stand-by heater's thermostat", "°C", 0, 25, 2, [2, 3]) with { AboveLimit = true, AwakeWhen = (c, _) => !c["heater"].IsNone },
        Part(BenchKey, "bench under fleece", "bench"),
        Number("bench_set_c", "thermostat of the heated bench", "°C", 0, 25, 2, [2, 3]) with { AboveLimit = true, AwakeWhen = (c, p) => p.TryFind<Bench>(c[BenchKey].Id, out var bench) && bench.WattsPerM2 > 0 },
        Part("collector", "collector", "collector"),
        Number("collector_count", "number of collectors", "pieces", 1, 40, 2, [1, 2, 3, 4], whole: true) with { AwakeWhen = HasCollector },
        Part("mount", "mount", "mount", mayBeNone: false) with { AwakeWhen = HasCollector },
        Number("tilt_deg", "tilt of the collector", "° from flat", 0, 90, double.NaN, [45, 60, 75]) with { AwakeWhen = HasCollector },
        Number("azimuth_deg", "direction the collector faces", "° clockwise from true north", 0, 359, double.NaN, []) with { AwakeWhen = HasCollector },
        Number("limit_deg", "turn to either side", "°", 5, 90, 30, [20, 30, 45]) with { AwakeWhen = (c, p) => MountOf(c, p) is { } m && m.Turning != TurningKind.Fixed },
        Number("switch_hours", "timer from dawn to the afternoon position", "h", 2, 9, 5.5, [4.5, 5.5]) with { AwakeWhen = (c, p) => MountOf(c, p)?.Turning == TurningKind.TwoPosition },
        Number("steps", "steps of a stepping mount through the day", "steps", 3, 15, 5, [5], whole: true) with { AwakeWhen = (c, p) => MountOf(c, p)?.Turning == TurningKind.Stepped },
        Part("drive", "drive of the mount", "drive", mayBeNone: false) with { AwakeWhen = (c, p) => MountOf(c, p) is { NeedsDrive: true } },
        Small("shaft_seal", "seal of the turning shaft", SmallPartRole.ShaftSeal) with { AwakeWhen = (c, p) => MountOf(c, p) is { NeedsDrive: true } },
        Part("freeze_protection", "protection of the collector from freezing", "freeze-protection", mayBeNone: false) with { AwakeWhen = HasCollector },
        Part("tank", "tank", "tank", mayBeNone: false) with { AwakeWhen = HasCollector },
        Number("tank_count", "number of tanks side by side", "pieces", 1, 6, 1, [1], whole: true) with { AwakeWhen = HasCollector },
        Part("tank_jacket", "insulation round the tank", "tank-jacket") with { AwakeWhen = HasCollector },
        Part("pipe", "pipe between collector and tank", "pipe", mayBeNone: false) with { AwakeWhen = HasCollector },
        Part("pipe_insulation", "insulation of the pipe", "pipe-insulation") with { AwakeWhen = HasCollector },
        Part("pump", "pump", "pump", mayBeNone: false) with { AwakeWhen = HasCollector },
        Number("flow_l_per_min_m2", "flow through each square metre of collector", "L/(min·m²)", 0.2, 2, 0.9, [0.9]) with { AwakeWhen = HasCollector },
        Number("start_difference_k", "pump starts above this difference", "K", 2, 20, 8, [8]) with { AwakeWhen = HasCollector },
        Number("stop_difference_k", "pump stops below this difference", "K", 0.5, 10, 3, [3]) with { AwakeWhen = HasCollector },
        Part("release", "heat release from the tank", "release", mayBeNone: false) with { AwakeWhen = HasCollector },
        Number("release_count", "how much of it", "pieces or m", 1, 200, 1, [1, 2], whole: true) with { AwakeWhen = HasCollector },
        Number("release_set_c", "thermostat of the heat release", "°C", 0, 25, 3, [3]) with { AboveLimit = true, AwakeWhen = HasCollector },
        Number("release_band_k", "band of that thermostat", "K", 0.2, 6, 1, [1]) with { AwakeWhen = HasCollector },
        Number("supply_w", "power of the low-voltage supply, 0 for the cheapest that serves", "W", 0, 2000, 0, [0]) with { AwakeWhen = NeedsLowVoltage },
        Number("cable_mm2", "cross-section of the low-voltage cable to the greenhouse, 0 for the cheapest that serves", "mm²", 0, 25, 0, [0]) with { AwakeWhen = NeedsLowVoltage },
        Small("control_box", "box of the low-voltage controls", SmallPartRole.ControlBox) with { AwakeWhen = NeedsLowVoltage },
        Part("compost_mix", "material of a compost heap", "compost-mix"),
        Number("compost_m3", "size of the compost heap", "m³", 1, 60, 12, [8, 12]) with { AwakeWhen = HasCompost },
        Part("compost_wrap", "wrap round the compost heap", "compost-wrap") with { AwakeWhen = HasCompost },
        Part("compost_coil", "pipe in the compost heap, and as much again in the house", "compost-coil", mayBeNone: false) with { AwakeWhen = HasCompost },
        Number("compost_coil_m", "length of that pipe in the heap", "m", 10, 400, 100, [75, 150]) with { AwakeWhen = HasCompost },
        Part("compost_pump", "pump of the compost heap", "pump", mayBeNone: false) with { AwakeWhen = HasCompost },
        Number("compost_set_c", "thermostat of the compost heap's pump", "°C", 0, 25, 3, [3]) with { AboveLimit = true, AwakeWhen = HasCompost },
        Number("compost_rest_c", "core below which that pump rests", "°C", 0, 60, 40, [40]) with { AwakeWhen = HasCompost },
    ];

    private static readonly FrozenDictionary<string, int> Index = All.Select((c, i) => (c.Key, i)).ToFrozenDictionary(p => p.Key, p => p.i, StringComparer.Ordinal);

    /// <summary>Place of a choice in <see cref="All"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is no such choice.</exception>
    public static int IndexOf(string key) => Index[key];

    /// <summary>What a choice holds while it sleeps.</summary>
    public static ChoiceValue AtRest(Choice choice) => choice.Kind == ChoiceKind.Part ? ChoiceValue.None : ChoiceValue.Of(0);

    /// <summary>
    /// What a layout file means when it is silent about a number: for tilt and direction, towards the low winter sun; for a thermostat, a
    /// little above the frost limit.
    /// </summary>
    /// <param name="choice">A number.</param>
    /// <param name="ground">Latitude and frost limit.</param>
    public static double Standard(Choice choice, ChoiceGround ground) => choice.Key switch
    {
        "tilt_deg" => Math.Clamp(Math.Round((Math.Abs(ground.LatitudeDeg) + 15) / 5) * 5, 0, 90),
        "azimuth_deg" => ground.LatitudeDeg >= 0 ? 180 : 0,
        _ => Counted(choice, choice.Standard, ground),
    };

    /// <summary>What is tried where a scenario is silent about a number.</summary>
    /// <param name="choice">A number.</param>
    /// <param name="ground">Latitude and frost limit.</param>
    public static IReadOnlyList<double> Usual(Choice choice, ChoiceGround ground) =>
        choice.Usual.Count == 0 ? [Standard(choice, ground)] : [.. choice.Usual.Select(value => Counted(choice, value, ground)).Distinct()];

    /// <summary>True for the parts by which a person tells layouts apart.</summary>
    public static bool NamesTheLayout(Choice choice) => choice.Key is "night_cover" or "lining" or "barrel" or "heater" or BenchKey or "collector" or "mount" or "tank" or "compost_mix";

    private static double Counted(Choice choice, double value, ChoiceGround ground) =>
        choice.AboveLimit ? Math.Clamp(ground.FrostLimitC + value, choice.Min, choice.Max) : value;

    private static bool HasCollector(IChoiceReader choices, Catalogue parts) => !choices["collector"].IsNone;

    private static bool NeedsLowVoltage(IChoiceReader choices, Catalogue parts) =>
        HasCollector(choices, parts)
        || (HasCompost(choices, parts) && parts.TryFind<Pump>(choices["compost_pump"].Id, out var pump) && pump.Volts < SupplyPlan.MainsVolts)
        || (parts.TryFind<Bench>(choices[BenchKey].Id, out var bench) && bench.Volts is > 0 and < SupplyPlan.MainsVolts)
        || (parts.TryFind<NightCover>(choices["night_cover"].Id, out var cover) && cover.IsAutomatic);

    private static bool HasCompost(IChoiceReader choices, Catalogue parts) => !choices["compost_mix"].IsNone;

    private static CollectorMount? MountOf(IChoiceReader choices, Catalogue parts) => parts.TryFind<CollectorMount>(choices["mount"].Id, out var mount) ? mount : null;

    private static Choice Part(string key, string title, string kind, bool mayBeNone = true) =>
        new() { Key = key, Title = title, Kind = ChoiceKind.Part, PartKind = kind, MayBeNone = mayBeNone };

    private static Choice Small(string key, string title, SmallPartRole role) => Part(key, title, "small-part", mayBeNone: false) with { Role = role };

    private static Choice Number(string key, string title, string unit, double min, double max, double standard, double[] usual, bool whole = false) =>
        new() { Key = key, Title = title, Kind = ChoiceKind.Number, Unit = unit, Min = min, Max = max, Standard = standard, Usual = usual, Whole = whole };
}
