using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Systems.Benches;

/// <summary>How a bench is said.</summary>
internal static class BenchWords
{
    public const string Device = "heated bench";
    public const string Thermostat = "thermostat under its fleece";
    public const string Relay = "relay, by the thermostat under the fleece";
    public const string RelayName = "relay of the bench";
    public const string EnoughUnit = "m² of bench that is enough, 0 where the whole house must be held";

    private const string System = "bench";

    public static PlantPlace Place { get; } = new(
        "bench",
        "under the fleece",
        "or a bench under fleece in it",
        "Only the plants on the bench are held: the air of the house itself falls to");

    public static Purpose Heated { get; } = new(System, "Warms the plants and not the house.", "all plants that must live stand on it");

    public static Purpose Unheated { get; } = new(
        System,
        "Slows the plants' cooling through the night.",
        "all plants that must live stand on it");

    public static Purpose ThermostatPart { get; } =
        new(System, "Starts the bench's heat when it falls to its setting.", "its feeler among the pots, under the fleece");

    public static Purpose RelayPart { get; } = new(
        System,
        "Switches the bench, whose current is more than the thermostat bears.",
        "in the control box");

    public static Caution HeatInTheWet { get; } = new("Heated bench", """
        Heating cable and mats lie in the wet: only such as are made for it, whole, never crossed, cut or covered with anything but sand
        or pots; mains ones only behind a 30 mA residual-current device, after the local code and joined by a licensed person. Look at
        them every autumn.
        """.ReplaceLineEndings(" "));

    public static Caution FleeceFire { get; } = new("Fleece over heat", """
        Fleece is thin plastic: it melts and burns. Hoops keep it a hand clear of cable, mat and plugs, nothing else hot stands under or
        beside it, and what heats has a cut-out of its own; never a lamp or flame under fleece. Look at it on the first evenings, not
        only by day.
        """.ReplaceLineEndings(" "));

    public static FormattableString NotEnough => $"The whole house must be held: the scenario names no bench that is enough.";

    public static FormattableString IsEnough(double areaM2) => $"All plants that must live stand on {areaM2:0.#} m² of bench.";

    public static string FitsTheFloor(double floorM2) => Written.Sentence($"a bench that fits the floor of {floorM2:0.##} m²");

    public static string SayEnoughFirst(string key) => $"'{key}' in [greenhouse], the bench that is enough, before a bench may be chosen";

    public const string Fleece = "heat through the fleece";
    public const string FleeceWhy = "A fleece that does not lie close lets warm air out at its edges (estimate, no source).";

    public static string LooseFleece(double factor) => Written.Sentence($"the fleece lets {factor:0.#} times as much heat out");

    public static IEnumerable<LogColumn> Log(bool isHeated)
    {
        yield return new("coldest under the fleece", PaperWords.Celsius);
        if (isHeated)
            yield return new("electricity meter of the bench", "kWh");
    }

    public static IEnumerable<CommissioningStep> Steps(double setC, double volts, bool isOnMains, PaperGround ground) =>
    [
        .. ground.Try(
            Heated, "before sand or pots lie on it: look at cable or mat on its whole length, then let it warm for an hour",
            Written.Sentence($"whole, nowhere crossed, and evenly warm to the hand; {volts:0} V on its label"), "", isOnMains),
        .. ground.Try(
            ThermostatPart, "hang its feeler among the pots with a good thermometer, and close the fleece in the evening",
            Written.Sentence($"heats below {setC:0.#} °C, and nothing under the fleece is hot"), PaperWords.Celsius),
        .. ground.Try(RelayPart, "listen to it while the thermostat switches", "pulls in and drops out"),
        .. ground.Try(Unheated, "close the fleece and walk round it", "no gap at edge or ends"),
    ];

    public static string Title(double areaM2, bool isHeated) =>
        Written.Sentence($"{areaM2:0.#} m² {(isHeated ? "heated " : "")}bench under fleece");

    public static IEnumerable<Dial> Dials(bool isHeated, double setC, double limitC)
    {
        yield return new(isHeated ? Heated : Unheated, new(
            "Fleece over the bench",
            "close at dusk, open after sunrise, every day",
            "Closed it keeps the bench's warmth; by day the plants want light, and a closed fleece in the sun cooks them."));
        if (isHeated)
        {
            yield return new(ThermostatPart, new("Bench's thermostat", Written.Sentence($"{setC:0.#} °C"), Written.Sentence(
                $"Above the limit of {limitC:0.#} °C, because a thermostat lags;",
                $"its feeler hangs among the pots, under the fleece and off the mat.")));
        }
    }

    public static IEnumerable<Upkeep> Upkeep(bool isHeated)
    {
        yield return new("Close the fleece and open it again.", Design.Upkeep.EveryDay, 12);
        if (isHeated)
            yield return new("Look at cable or mat for cuts and scorched places, and test its thermostat.", "every autumn", 1);
    }
}
