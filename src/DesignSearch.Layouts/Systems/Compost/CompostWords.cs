using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>How a compost heap is said.</summary>
internal static class CompostWords
{
    public const string PumpDevice = "pump of the compost heap";
    public const string PumpSwitch = "thermostat of the house, and difference controller with a sensor in the core";

    public const string HeapName = "compost heap";
    public const string CoilName = "coil in the heap and pipe in the house";
    public const string ThermostatName = "thermostat for the heap's heat";
    public const string CoreSensorName = "sensor in the heap's core";
    public const string ControllerName = "controller of the heap's core";
    private const string System = "compost heap";
    private const double DriestMix = 0.5;
    private const double WettestMix = 0.65;

    public static Purpose Mix { get; } = new(
        System,
        "Its rotting is the heat; fresh for every season.",
        "in the open beside the house, away from walls that burn");

    public static Purpose Wrap { get; } = new(
        System,
        "Keeps the core hot and the rain out; it must breathe.",
        "round the sides and over the top");

    public static Purpose Coil { get; } = new(
        System,
        "Takes the heat from the core and gives it to the house.",
        "half in the heap, half along the beds");

    public static Purpose Pump { get; } = new(System, "Moves the water round.", "inside the house, at the lowest place");

    public static Purpose Thermostat { get; } = new(
        System,
        "Starts the pump when the air falls to its setting.",
        "at plant height, out of the sun");

    public static Purpose CoreSensor { get; } = new(System, "Stops the pump before the core is quenched.", "in the core of the heap");

    public static Purpose CoreController { get; } = new(System, "Lets the pump run only while the core is warm.", "in the control box");

    public static IEnumerable<Upkeep> Upkeep { get; } =
    [
        new("Measure the core of the heap.", "every week", 3),
        new("Build the heap anew with fresh material.", "before every season", 16),
        new("Look for leaks at the pump and let air out of the pipe.", "every month of the season", 1),
    ];

    public static string Title(double volumeM3, double coilM) =>
        Written.Sentence($"{volumeM3:0.#} m³ compost heap with a {coilM:0} m coil");

    public static FormattableString Heat(double hottestC, double weakestC) =>
        $"A fresh heap may reach {hottestC:0} °C; pipe and pump bear {weakestC:0} °C.";

    public static string OtherHeat(double factor) => Written.Sentence($"the compost heap gives {factor:0.#} times its heat");

    public static IEnumerable<Setting> Settings(double setC, double restC) =>
    [
        new(
            "Thermostat of the compost heap's pump", Written.Sentence($"{setC:0.#} °C"),
            "Above the stand-by heater, so that the heap's heat goes first."),
        new(
            "Heap's pump rests",
            Written.Sentence($"core below {restC:0} °C"),
            "A heap cooled further goes cold and needs weeks to come back."),
        new(
            "Building the heap",
            "moist as a wrung-out sponge, loose enough to breathe, half a metre of cover over the pipe",
            "Too wet, too dry or too dense it does not heat; measure the core every week."),
    ];

    public static IEnumerable<Caution> Cautions(double moisture) =>
    [
        new("Compost gas", """
            A rotting heap gives off carbon dioxide, ammonia and, where air is short, carbon monoxide and hydrogen sulphide.
            Keep it in the open, never inside or against a door or vent of the house; do not climb into a pit or bin.
            """.ReplaceLineEndings(" ")),
        new("Compost fire and spores", """
            A large dry heap can set itself alight: keep it moist, watch the core, stay below 70 °C, and keep it clear of walls,
            straw stores and film. Wear a dust mask when turning it. Ask about boundary, odour and run-off rules.
            """.ReplaceLineEndings(" ")),
        new("Heat from compost", $"""
            No heap can be foretold within a factor of two, and many have failed in their first winter. Keep a heater in reserve.
            {Moisture(moisture)} It needs air in its pores, above some 5 % oxygen: coarse chips, never trodden down, air let in
            from below; a heap that smells of rot has too little.
            """.ReplaceLineEndings(" ")),
    ];

    // The bands are common practice, no source.
    private static string Moisture(double share) => share switch
    {
        < DriestMix => Written.Sentence(
            $"This mix is too dry at {100 * share:0} % of water: wet it to between 50 and 65 % while building, or it hardly rots."),
        > WettestMix => Written.Sentence(
            $"This mix is too wet at {100 * share:0} % of water: mix in dry chips until it holds 50 to 65 %, or it rots without air",
            $"and stays cold."),
        _ => Written.Sentence($"Moisture should lie between 50 and 65 %, and this mix has {100 * share:0}: keep it there."),
    };
}
