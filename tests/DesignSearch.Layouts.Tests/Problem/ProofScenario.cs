namespace DesignSearch.Layouts.Tests;

/// <summary>
/// Invented scenarios for the search: two January weeks, so that every layout of a large space can be simulated. The middling one has
/// 1 402 920 different layouts, the small one 2688 that pass the first checks, the large one more than a thousand million.
/// </summary>
internal static class ProofScenario
{
    private static readonly (string, string)[] Common =
    [
        ("start = \"11-01\"\nend = \"03-31\"", "start = \"01-05\"\nend = \"01-18\"\nwarm_up_days = 2"),
        ("\n[[winters]]\nname = \"hard\"\nkind = \"hard\"\nweight = 0.1\nreturn_years = 10\n", ""),
        ("mains_at_greenhouse = false", "mains_at_greenhouse = true"),
        ("mount = [\"stand-timber\", \"two-position-rocker\"]", "mount = \"stand-timber\""),
        ("release = \"fan-coil-small\"", "release = \"fan-coil-150\""),
    ];

    public static SmallScenario Middling() => new(MiddlingChanges);

    /// <summary>The same where hours of building and of upkeep count in the life cost, the electrician's at a rate of their own.</summary>
    public static SmallScenario OwnWork() => new(
        [.. MiddlingChanges, ("interest = 0.03", "interest = 0.03\nlabour_rate_per_hour = 17.35\nlicensed_rate_per_hour = 61.45")]);

    private static readonly (string, string)[] MiddlingChanges =
    [
        .. Common,
        ("night_cover = [\"none\", \"aluminised-hand\"]", "night_cover = [\"none\", \"bubble-screen-hand\", \"aluminised-hand\"]"),
        ("lining = [\"none\", \"bubble-lining-large\"]", "lining = [\"none\", \"bubble-lining-large\", \"twinwall-lining-6\"]"),
        ("sealing = [\"none\", \"sealing-basic\"]", "sealing = [\"none\", \"sealing-basic\", \"sealing-thorough\"]"),
        ("perimeter_board = \"none\"", "perimeter_board = [\"none\", \"edge-board-30\", \"edge-board-50\"]"),
        ("wind_break = \"none\"", "wind_break = [\"none\", \"wind-net-half\"]"),
        ("heater_set_c = 4", "heater_set_c = [3, 4]"),
        ("collector_count = 2", "collector_count = [1, 2]"),
        ("tilt_deg = 60", "tilt_deg = [50, 60, 70]"),
        ("tank = \"cage-1000-used\"", "tank = [\"cage-600-used\", \"cage-1000-used\", \"drum-tank-200\"]"),
        ("tank_jacket = \"jacket-wool-100\"", "tank_jacket = [\"none\", \"jacket-wool-50\", \"jacket-wool-100\"]"),
        ("pipe_insulation = \"foam-pe-20-large\"", "pipe_insulation = [\"none\", \"foam-pe-20-large\"]"),
        ("release_set_c = 5", "release_set_c = [3, 5]\nrelease_band_k = [1, 2]"),
    ];

    public static SmallScenario Small() => new(
    [
        .. Common,
        ("perimeter_board = \"none\"", "perimeter_board = [\"none\", \"edge-board-50\"]"),
        ("wind_break = \"none\"", "wind_break = [\"none\", \"wind-net-half\"]"),
        ("tilt_deg = 60", "tilt_deg = [50, 70]"),
        ("tank_jacket = \"jacket-wool-100\"", "tank_jacket = [\"none\", \"jacket-wool-100\"]"),
        ("release_set_c = 5", "release_set_c = [4, 6]"),
    ]);

    public static SmallScenario Large() => new(LargeChanges);

    /// <summary>The large one where the fan coil may gather day heat, at a set point that mild days reach.</summary>
    public static SmallScenario Gathering() => new([.. LargeChanges, ("release_band_k = [1, 2]", "release_band_k = [1, 2]\ngather_above_c = [0, 9, 12]")]);

    private static readonly (string, string)[] LargeChanges =
    [
        .. Common,
        ("night_cover = [\"none\", \"aluminised-hand\"]", "night_cover = [\"none\", \"bubble-screen-hand\", \"aluminised-hand\", \"aluminised-motor\"]"),
        ("lining = [\"none\", \"bubble-lining-large\"]", "lining = [\"none\", \"bubble-lining-large\", \"twinwall-lining-6\", \"north-board-50\"]"),
        ("sealing = [\"none\", \"sealing-basic\"]", "sealing = [\"none\", \"sealing-basic\", \"sealing-thorough\"]"),
        ("perimeter_board = \"none\"", "perimeter_board = [\"none\", \"edge-board-30\", \"edge-board-50\"]"),
        ("wind_break = \"none\"", "wind_break = [\"none\", \"wind-net-half\"]"),
        ("barrel = [\"none\", \"barrel-200-used\"]", "barrel = [\"none\", \"barrel-200-used\", \"barrel-120-used\"]"),
        ("barrel_count = [2, 4, 6]", "barrel_count = { from = 1, to = 8, step = 1 }"),
        ("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-1500\", \"fan-heater-2kw\"]"),
        ("heater_set_c = 4", "heater_set_c = [2, 3, 4, 5]"),
        ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = [\"none\", \"flat-plate-2m2\", \"flat-plate-thin-1m6\"]"),
        ("collector_count = 2", "collector_count = [1, 2, 3, 4]"),
        ("mount = \"stand-timber\"", "mount = [\"stand-timber\", \"two-position-rocker\"]"),
        ("tilt_deg = 60", "tilt_deg = [40, 50, 60, 70, 80]"),
        ("limit_deg = 30", "limit_deg = [20, 30, 45]"),
        ("tank = \"cage-1000-used\"", "tank = [\"cage-600-used\", \"cage-1000-used\", \"drum-tank-200\"]"),
        ("tank_jacket = \"jacket-wool-100\"", "tank_jacket = [\"none\", \"jacket-wool-50\", \"jacket-wool-100\"]"),
        ("pipe_insulation = \"foam-pe-20-large\"", "pipe_insulation = [\"none\", \"foam-pe-20-large\"]"),
        ("release_set_c = 5", "release_set_c = [3, 4, 5]\nrelease_band_k = [1, 2]"),
    ];

    /// <summary>The small one with every heat pump of the starter catalogue beside the heaters.</summary>
    public static SmallScenario HeatPumps() => new(
    [
        .. Common,
        ("perimeter_board = \"none\"", "perimeter_board = [\"none\", \"edge-board-50\"]"),
        ("heat_pump = \"none\"", "heat_pump = [\"hp-single-speed\", \"hp-inverter\", \"hp-inverter-guard\", \"hp-cold-climate\", \"hp-through-wall\"]"),
    ]);

    /// <summary>The small one with day-heat stores.</summary>
    public static SmallScenario DayStores() => new(
    [
        .. Common,
        ("perimeter_board = \"none\"", "perimeter_board = [\"none\", \"edge-board-50\"]"),
        ("day_pipe = \"none\"", "day_pipe = [\"earth-corrugated-100\", \"earth-smooth-110\"]"),
    ]);

    /// <summary>Everything that can be built, heaps, benches, heat pumps and day-heat stores among it, with room and money for most of it.</summary>
    public static SmallScenario Everything() => new(
    [
        .. Common.Where(c => !c.Item1.StartsWith("mount", StringComparison.Ordinal) && !c.Item1.StartsWith("release", StringComparison.Ordinal)),
        ("budget = 4200", "budget = 40000"),
        ("collector_space_m2 = 5", "collector_space_m2 = 14"),
        ("store_floor_m2 = 3.0", "store_floor_m2 = 6"),
        ("frost_limit_c = 2.0", "frost_limit_c = 2.0\nbench_enough_m2 = 2.4"),
        .. Left("night_cover = [\"none\", \"aluminised-hand\"]", "lining = [\"none\", \"bubble-lining-large\"]", "sealing = [\"none\", \"sealing-basic\"]"),
        .. Left("perimeter_board = \"none\"", "wind_break = \"none\"", "compost_mix = \"none\"", "day_pipe = \"none\""),
        ("heat_pump = \"none\"  ", "heat_pump = [\"none\", \"hp-inverter\", \"hp-cold-climate\"] "),
        .. Left("barrel = [\"none\", \"barrel-200-used\"]", "heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater_set_c = 4\n"),
        .. Left("collector = [\"none\", \"flat-plate-2m2\"]", "collector_count = 2", "mount = [\"stand-timber\", \"two-position-rocker\"]"),
        .. Left("drive = \"slew-600nm\"", "freeze_protection = \"drain-back-simple\"", "tank = \"cage-1000-used\"", "tank_jacket = \"jacket-wool-100\""),
        .. Left("pipe = \"pex-25\"", "pipe_insulation = \"foam-pe-20-large\"", "pump = \"solar-pump-19w\"", "release = \"fan-coil-small\"", "release_count = 1"),
    ]);

    // Of what a scenario does not speak everything usual is tried.
    private static IEnumerable<(string, string)> Left(params string[] lines) => lines.Select(l => (l, "\n"));
}
