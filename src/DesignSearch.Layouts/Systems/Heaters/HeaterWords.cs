using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Heaters;

/// <summary>How the stand-by heater is said.</summary>
internal static class HeaterWords
{
    public const string Device = "stand-by heater";
    public const string OwnThermostat = "its own thermostat";
    public const string FrostThermostat = "frost thermostat";
    public const string Contactor = "contactor, its coil by the low-voltage thermostat";
    public const string ContactorName = "contactor of the heater";
    public const string HighLimitName = "high-limit cut-out of the heater";
    public const string Stops = "high-limit cut-out in its circuit, which is its own; plugged into a socket where a plug bears it";

    private const string System = "stand-by heater";

    public static Purpose Heater { get; } = new(
        System, "Holds the limit when all else is spent.",
        "half a metre clear all round, never under film");

    public static Purpose HighLimit { get; } = new(
        System,
        "Cuts the heater off when the air over it is too hot; reset by hand, after the cause is found.",
        "half a metre over the heater, in its own circuit");

    public static Purpose ContactorPart { get; } =
        new(System, "Switches the heater, whose current is more than a thermostat bears; the coil is on low voltage.", "in the mains box");

    public static Purpose ThermostatPart { get; } = new(
        System,
        "Starts the heater when the air falls to its setting.",
        "at plant height, out of the sun");

    public static Caution Fire { get; } = new("Fire", """
        An electric heater wants half a metre to a metre clear all round, never film, fleece or dust near it, the high-limit cut-out and the
        circuit of its own that are on the list.
        """.ReplaceLineEndings(" "));

    public static IEnumerable<Upkeep> Upkeep { get; } =
        [new("Run the heater once, press the test button of the residual-current device and dust the grille.", "every autumn", 0.5)];

    public static LogColumn Meter { get; } = new("electricity meter of the heater", "kWh");

    public static IEnumerable<CommissioningStep> Steps(double setC, double bandK, (bool IsOwn, double Volts) thermostat, PaperGround ground)
    {
        var swings = Written.Sentence($"heats at {setC - bandK / 2:0.#} °C and stops at {setC + bandK / 2:0.#} °C");
        return
        [
            .. ground.Try(thermostat.IsOwn ? Heater : ThermostatPart, PaperWords.Cooled(thermostat.Volts), swings, PaperWords.Celsius),
            .. ground.Try(ContactorPart, "listen to it while the thermostat switches", "pulls in and drops out, without a hum"),
            .. ground.Try(
                HighLimit, "hold a bottle of hot water to its feeler while the heater runs",
                "the heater stops, stays off when it cools, and comes back when it is reset by hand"),
        ];
    }

    public static string Title(double watts) => Written.Sentence($"{watts / 1000:0.#} kW heater");

    public static Setting Thermostat(double setC, double limitC) => new(
        "Stand-by heater's thermostat",
        Written.Sentence($"{setC:0.#} °C"),
        Written.Sentence(
            $"Above the limit of {limitC:0.#} °C, because a thermostat lags; check it with a good thermometer at plant height."));

    public static FormattableString Band(double setC, double bandK, double coldestC, double limitC)
    {
        FormattableString falls =
            $"Set at {setC:0.#} °C, its band of {bandK:0.#} K lets the air fall to {coldestC:0.#} °C before it heats;";
        return $"{falls} the limit is {limitC:0.#} °C.";
    }
}
