using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Day heat that the fan coil brings into the tank, in words.</summary>
internal static class GatheringWords
{
    public const string ThermostatName = "day thermostat of the heat release";
    public const string ControllerName = "difference controller of the heat release";
    public const string TankSensorName = "difference controller's sensor at the tank's top";
    public const string AirSensorName = "difference controller's sensor in the house";

    // Said after what starts the release at night.
    public const string OrByDay = "; by day the day thermostat and the difference controller, in line";

    private const string System = "heat release";

    public static Purpose Thermostat { get; } = new(
        System,
        "Starts pump and fan by day when the air rises to its setting: the house's surplus goes into the tank.",
        "at plant height, out of the sun");

    public static Purpose Controller { get; } = new(
        System,
        "Lets them run by day only while the air is warmer than the tank; in line with the day thermostat, beside the night's two.",
        "in the control box; one on mains beside it, in a case of its own");

    public static Purpose TankSensor { get; } = new(System, "Tells that controller the tank's top.", "at the tank's top");

    public static Purpose AirSensor { get; } = new(System, "Tells that controller the air.", "beside the day thermostat");

    public static FormattableString Fan(bool hasFan) => hasFan
        ? (FormattableString)$"The fan blows the house's air through the coil."
        : $"Without a fan hardly any heat of the air gets into the water: take a fan coil, or gather nothing.";

    public static FormattableString Apart(double setC, double leastC, double mostC) =>
        $"Day heat goes into the tank from {setC:0.#} °C; {leastC:0.#} to {mostC:0.#} °C keep it clear of heaters and vents.";

    public static IEnumerable<Dial> Dials(double setC, double startK) =>
    [
        new(Thermostat, new(
            "Day thermostat of the heat release",
            Written.Sentence($"starts above {setC:0.#} °C"),
            "The contact that closes on rise. Below the vents, so that the tank gets the heat before the garden does.")),
        new(Controller, new(
            "Difference controller of the heat release",
            Written.Sentence($"air {startK:0.#} K over the tank's top on, {startK / 3:0.#} K off"),
            "With less, pump and fan take more than they bring.")),
        new(Controller, new(
            "Water on the coil by day",
            "a tray under it, drained away from fan and wiring",
            "Colder than the air, it drips.")),
    ];

    public static IEnumerable<CommissioningStep> Steps(double setC, PaperGround ground) =>
    [
        .. ground.Try(
            Thermostat, "warm it with your hand while the tank is cold",
            Written.Sentence($"pump and fan start; set back to {setC:0.#} °C"), PaperWords.Celsius),
        .. ground.Try(Controller, "bring its two sensors to the same warmth", "pump and fan stop"),
    ];
}
