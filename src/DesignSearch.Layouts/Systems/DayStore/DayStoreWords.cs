using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>How a day-heat store is said.</summary>
internal static class DayStoreWords
{
    public const string Device = "fan of the day-heat store";
    public const string Switch = "two thermostats in the house, through the difference controller";
    public const string HouseAir = "air of the house";
    public const string PipesName = "pipes in the ground";
    public const string ThermostatsName = "two thermostats of the day-heat store";
    public const string SoilSensorName = "sensor in the ground";
    public const string ControllerName = "difference controller of the day-heat store";
    public const string DrySoil = "the soil round the store's pipes is dry";
    public const string WetSoil = "the soil round the store's pipes is wet";
    public const string Soil = "soil round the store's pipes";
    public const string PipeHeat = "heat through the store's pipes";
    public const string SoilWhy =
        "Dry sand stores and conducts half as much as moist soil, wet clay a third more (after the soils of ISO 13370).";
    public const string SlimeWhy = "Slime, kinks and puddles keep the air from the pipe's wall (estimate, no source).";
    public const string Slime = "a third less heat passes the store's pipes, by slime or kinks";

    private const string System = "day-heat store";

    public static string OtherSoil(double factor) => factor < 1 ? DrySoil : WetSoil;

    public static Purpose Pipe { get; } = new(
        System,
        "Takes the day's heat into the soil and gives it back; the hours hold the trenches.",
        "along the house below the floor, with a fall");

    public static Purpose Header { get; } = new(System, "Joins the pipes; the lower one drains.", "at both gables, lids within reach");

    public static Purpose Fan { get; } = new(System, "Moves the house's air through the pipes.", "on the dry header, under a cover");

    public static Purpose Thermostats { get; } =
        new(System, "One starts the fan above its setting, one below.", "at plant height, out of the sun and of the outlet's stream");

    public static Purpose SoilSensor { get; } =
        new(System, "Tells the soil's warmth.", "at the middle pipe, half-way along, outside of it");

    public static Purpose Controller { get; } = new(System, "Stops the fan while it would bring nothing.", "in the control box");

    public static IEnumerable<Upkeep> Upkeep { get; } =
    [
        new("Clean the mesh and the wheel of the store's fan.", "every autumn and at mid-winter", 1),
        new("Open both headers: see that water has run off, look into the pipes with a lamp, wash slime out.", "every autumn", 2),
    ];

    public static LogColumn SoilColumn { get; } = new("soil at the store's pipes", PaperWords.Celsius);

    public static IEnumerable<CommissioningStep> Steps(double chargeC, double setC, PaperGround ground) =>
    [
        .. ground.Try(
            Pipe, "before it is covered: lay a spirit level on every pipe", "falls 1 to 2 cm a metre to the header that drains", "cm/m"),
        .. ground.Try(Header, "pour a bucket of water into the upper one", "all of it comes out at the drain of the lower one"),
        .. ground.Try(
            Thermostats, "turn the upper one down, then the lower one up, past what a good thermometer beside them shows",
            Written.Sentence($"the fan starts each time; set back to {chargeC:0.#} °C and {setC:0.#} °C"), PaperWords.Celsius),
        .. ground.Try(Controller, "bring sensor and thermostat to the same warmth", "the fan stops"),
        .. ground.Try(Fan, "hold a strip of paper before each pipe's end", "air moves in all of them"),
    ];

    public static string Title(PipeField field) => Written.Sentence($"day-heat store of {field.TotalM:0} m of pipe");

    public static FormattableString WantedHeader(int pipes) => $"headers for {pipes} pipes of a day-heat store";

    public static FormattableString Spacing(PipeField field, double outerMm, double diameters) => $"""
        {field.Count} pipes of {outerMm:0} mm lie {100 * field.SpacingM:0} cm from middle to middle; {diameters:0.#} diameters are asked.
        """;

    public static FormattableString Speed(double metresPerS, double least, double most) =>
        $"The air moves at {metresPerS:0.0} m/s in the pipes; {least:0.#} to {most:0.#} are usual.";

    public static FormattableString Apart(double chargeC, double leastC, double mostC) =>
        $"Heat is carried down from {chargeC:0.#} °C; {leastC:0.#} to {mostC:0.#} °C keep it clear of heaters and vents.";

    public static FormattableString Worth(DayStoreJudgement judged) =>
        $"{string.Join(" ", judged.Verdicts().Select(v => Said(v, judged)))}";

    public static IEnumerable<Dial> Dials(double chargeC, double setC, double limitC, double startK) =>
    [
        new(Thermostats, new(
            "Upper thermostat of the day-heat store",
            Written.Sentence($"{chargeC:0.#} °C"),
            "Below the vents, so that the soil gets the heat before the garden does, and above every heater.")),
        new(Thermostats, new(
            "Lower thermostat of the day-heat store",
            Written.Sentence($"{setC:0.#} °C"),
            Written.Sentence($"Above the limit of {limitC:0.#} °C; the soil is hardly warmer, so that more only runs the fan."))),
        new(Controller, new(
            "Difference controller of the day-heat store",
            Written.Sentence($"{startK:0.#} K on, {startK / 3:0.#} K off"),
            "Between house and soil; with less, the fan takes more than it brings.")),
        new(Pipe, new(
            "Fall of the store's pipes", "1 to 2 cm a metre, to the header with the drain", "Water condenses in them and must not stand.")),
    ];

    public static IEnumerable<Caution> Cautions(bool isOnMains)
    {
        yield return new("Digging", OneLine("""
            Find buried cables, gas and water pipes before the first spade, by the local service. No one stands in a narrow trench deeper
            than the knee unless it is shored; spoil and machine stay off its edge, and the trench off the footings of a wall.
            """));
        yield return new("Air from the ground", OneLine("""
            Air that has been below may carry radon, mould and the smell of rot. Seal every joint, move the house's own air alone, measure
            radon where it is known, air the house before longer work, and let nobody sleep there.
            """));
        yield return new("Water in the pipes", OneLine("""
            High ground water floods them: lay none below its highest level, and let the drain run to open ground. Mesh on every opening
            against animals; on each header a lid that a child cannot lift.
            """));
        if (isOnMains)
        {
            yield return new("Mains fan", OneLine("""
                A mains fan in damp air: behind a residual-current device, guarded against fingers, joined by a licensed person after the
                local code.
                """));
        }
    }

    private static string Said(DayStoreVerdict verdict, DayStoreJudgement judged) => Written.Sentence(verdict switch
    {
        DayStoreVerdict.FanEatsIt =>
            $"Not worth its digging: it brings back only {judged.Cop:0.0} times its fan's current; no trench is worth that.",
        DayStoreVerdict.SunTooShort =>
            $"The sun left {judged.ChargeKwhPerDay:0.0} kWh a day to carry down; {100 * judged.GroundShare:0} % came of the ground.",
        DayStoreVerdict.SoilLimits => $"The soil is the bottleneck: a larger fan does nothing, more pipe would.",
        DayStoreVerdict.AirLimits => $"The air is the bottleneck: more pipe does nothing, a larger fan would, if its current is worth it.",
        _ => $"Worth its digging if that is cheap: it brings back {judged.Cop:0.0} times its fan's current.",
    });

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
