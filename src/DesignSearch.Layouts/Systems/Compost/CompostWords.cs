using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>How a compost heap is said.</summary>
internal static class CompostWords
{
    public const string PumpDevice = "pump of the compost heap";
    public const string PumpSwitch = "thermostat of the house and one in the core";

    private const double DriestMix = 0.5;
    private const double WettestMix = 0.65;

    private static readonly Upkeep Core = new("Measure the core of the heap at several places.", "every week", 3);

    private static readonly Upkeep Loop = new(
        "Look for leaks at pump and header tank, top up with the same mix, let air out, rinse the strainer.",
        "every month of the season",
        1.5);

    private static readonly Upkeep Fluid = new("Test the strength of the glycol in the heap's pipes.", "every autumn", 0.5);

    public static IEnumerable<Upkeep> Upkeep(double buildHours) =>
    [
        Core, Loop, Fluid, new("Cart the old heap away and build it anew with fresh material.", "before every season", buildHours),
    ];

    public static LogColumn CoreColumn { get; } = new("core of the heap", PaperWords.Celsius);

    public static IEnumerable<CommissioningStep> Steps(HeapPlan heap, PaperGround ground) =>
    [
        .. ground.Try(
            CompostPurposes.Coil, "before the heap is built over it: fill with water from the lowest place, header tank too, and leave it",
            "no drop at any joint after a night, and no joint inside the heap"),
        .. ground.Try(
            CompostPurposes.Glycol, "measure a drop with a refractometer once it has gone round for an hour",
            Written.Sentence($"ice no sooner than {heap.FreezesAtC:0.#} °C"), PaperWords.Celsius),
        .. ground.Try(CompostPurposes.Header, "look into it with the loop cold", "half full, its overflow led into a can"),
        .. ground.Try(
            CompostPurposes.Thermostat, PaperWords.Cooled(HeapListing.ControlVolts(heap)),
            Written.Sentence($"while the core is warm the pump starts below {heap.Numbers.SetPointC:0.#} °C"), PaperWords.Celsius),
        .. ground.Try(
            CompostPurposes.CoreThermostat, "put its sensor into cold water while the house calls for heat",
            Written.Sentence($"the pump stops below {heap.Numbers.RestBelowC:0} °C"), PaperWords.Celsius),
        .. ground.Try(
            CompostPurposes.Probe, "measure the core at several places in the second week",
            Written.Sentence($"over {heap.Numbers.RestBelowC:0} °C, and under {HeapPlan.HottestC:0} °C"), PaperWords.Celsius),
    ];

    public static string Title(double volumeM3, double coilM) =>
        Written.Sentence($"{volumeM3:0.#} m³ compost heap with a {coilM:0} m coil");

    public static FormattableString Heat(double hottestC, double weakestC) =>
        $"A fresh heap may reach {hottestC:0} °C; pipe and pump bear {weakestC:0} °C.";

    public static FormattableString Frost(double share, double freezesC, double nightC)
    {
        FormattableString night = $"Standing still, the heap spent or the current cut, the outdoor pipes come to about {nightC:0} °C;";
        return share > 0
            ? $"{night} water with {100 * share:0} % of glycol begins to freeze at {freezesC:0.0} °C."
            : (FormattableString)$"{night} plain water freezes and bursts them, insulated or not.";
    }

    public static FormattableString Header(double neededM, double ridgeM) =>
        $"The heap's highest pipe asks for a header tank {neededM:0.0} m up; the ridge is at {ridgeM:0.0} m.";

    public static FormattableString Burns(double apartM, double leastM) =>
        $"The wrap burns when it is dry: the heap stands {apartM:0.#} m from the house and is to stand {leastM:0.#} m.";

    public static FormattableString Alone(double spareK)
    {
        const string Doubt = "no heap can be foretold within a factor of two: keep a heater in reserve";
        return spareK >= 0
            ? (FormattableString)$"The frost limit rests on a compost heap with no heater behind it, {spareK:0.0} K to spare; {Doubt}."
            : $"No heater stands behind the compost heap, and the limit is missed by {-spareK:0.0} K; {Doubt}.";
    }

    public static FormattableString Sleeve(double outerMm, double hottestC) =>
        $"an insulation for outdoor pipe of {outerMm:0} mm that bears {hottestC:0} °C";

    public const string HeapHeat = "heat of the compost heap";
    public const string HeatWhy =
        "Heaps of one kind give a third to one and a half times the usual heat, by moisture, air and size (estimate, no source).";

    public static string OtherHeat(double factor) => Written.Sentence($"the compost heap gives {factor:0.#} times its heat");

    public static IEnumerable<Dial> Dials(HeapPlan heap) =>
    [
        new(CompostPurposes.Thermostat, new(
            "Thermostat of the compost heap's pump", Written.Sentence($"{heap.Numbers.SetPointC:0.#} °C"),
            "Above the stand-by heater, so that the heap's heat goes first.")),
        new(CompostPurposes.Mix, new(
            "Day the heap is built",
            heap.Numbers.BuiltDays > 0
                ? Written.Sentence($"{heap.Numbers.BuiltDays:0} days after the season begins")
                : "before the season begins",
            "Its best heat comes in the weeks after; built later, more of it is left for the coldest ones.")),
        new(CompostPurposes.CoreThermostat, new(
            "Thermostat of the heap's core",
            Written.Sentence($"opens below {heap.Numbers.RestBelowC:0} °C"),
            "In line with the other: the pump runs while both call. A heap cooled further needs weeks to come back.")),
        new(CompostPurposes.Glycol, new(
            "Glycol in the heap's pipes",
            Written.Sentence($"{100 * heap.GlycolShare:0} % by mass: {heap.GlycolLitres:0} L in {heap.Litres:0} L"),
            Written.Sentence($"Ice begins at {heap.FreezesAtC:0} °C; measured with a refractometer, not guessed."))),
        new(CompostPurposes.Header, new(
            "Filling the heap's pipes",
            "from the lowest place until no more air comes, header tank half full when cold",
            Written.Sentence($"The mix grows in a heap of {HeapPlan.HottestC:0} °C; the overflow leads into a can, not into the bed."))),
        new(CompostPurposes.Mix, new(
            "Building the heap",
            "moist as a wrung-out sponge, loose enough to breathe, half a metre of cover over the pipe",
            "Too wet, too dry or too dense it does not heat; measure the core every week.")),
    ];

    public static IEnumerable<Caution> Cautions(HeapPlan heap) =>
    [
        new("Compost gas", """
            A rotting heap gives off carbon dioxide, ammonia and, where air is short, carbon monoxide and hydrogen sulphide.
            Keep it in the open, never inside or against a door or vent of the house; do not climb into a pit or bin.
            """.ReplaceLineEndings(" ")) { Harm = Harm.Kills },
        new("Compost fire and spores", Written.Sentence($"""
            A large dry heap can set itself alight: keep it moist, watch the core, stay below {HeapPlan.HottestC:0} °C, and keep it clear
            of walls, film and anything that burns. {Straw(heap)}Wear a dust mask when turning it. Ask about boundary, odour and run-off
            rules.
            """).ReplaceLineEndings(" ")),
        new("Heat from compost", $"""
            No heap can be foretold within a factor of two, and many have failed in their first winter. Keep a heater in reserve.
            {Moisture(heap.Mix.Moisture)} It needs air in its pores, above some 5 % oxygen: coarse chips, never trodden down, air let in
            from below; a heap that smells of rot has too little.
            """.ReplaceLineEndings(" ")),
        new("Hot pipe of the heap", """
            Water from a hot heap scalds: no tap on it, hot pipe out of children's reach, nothing to shut between pump and header tank.
            Glycol is not for drinking: label it, and keep its loop apart from all other water.
            """.ReplaceLineEndings(" ")),
    ];

    private static string Straw(HeapPlan heap) => heap.Wrap is { Burns: true }
        ? "Its wrap burns when dry: keep the outside damp, no smoking or grinding near it, and store the rest of the straw elsewhere. "
        : "";

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
