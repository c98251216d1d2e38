using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.HeatPumps;

namespace DesignSearch.Layouts.Systems.HeatPumps;

/// <summary>How a heat pump is said.</summary>
internal static class HeatPumpWords
{
    public const string Device = "heat pump";
    public const string Switch = "its own remote control; isolator beside the outdoor unit";
    public const string Current = "current of the heat pump";
    public const string Heat = "heat of the heat pump";
    public const string StoppingCold = "cold that stops the heat pump";
    public const string MakerWhy =
        "Makers' figures are of the test bench, without dirt, long pipes and frequent thawing (estimate, no source).";
    public const string IceWhy = "Ice and snow in the fan stop some sooner than the maker says (estimate, no source).";
    public const string LessEfficient = "the heat pump needs a quarter more current for its heat";
    public const string LessHeat = "the heat pump gives a fifth less heat";

    private const string System = "heat pump";

    public static Purpose Purpose { get; } = new(
        System,
        "Gives several times the heat of its current.",
        "indoor unit high at one gable, blowing along the house; outdoor unit on feet above the snow, free all round");

    public static IEnumerable<Upkeep> Upkeep { get; } =
    [
        new("Wash the indoor filters; a house of soil and spray clogs them faster than a dwelling.", "every six weeks of the season", 1.5),
        new("Clear leaves, ice and snow from the outdoor unit; see that melt water runs off.", "every month of the season, after snow", 2),
        new("Have a licensed person look for leaks and clean the coils.", "every second autumn", 0) { LicensedHoursPerYear = 0.5 },
    ];

    public static LogColumn Meter { get; } = new("electricity meter of the heat pump", "kWh");

    public static IEnumerable<CommissioningStep> Steps(double setC, PaperGround ground) =>
    [
        .. ground.Try(
            Purpose, "joints tried for leaks, pipes emptied of air and filled by weight",
            "tight, and the charge written on the unit's label", "g", isLicensed: true),
        .. ground.Try(
            Purpose, "let it heat on a cold evening, a good thermometer at plant height",
            Written.Sentence($"the house comes to {setC:0.#} °C; melt water runs off outdoors and freezes on no path"),
            PaperWords.Celsius),
        .. ground.Try(Purpose, "pull its breaker and put it back", "starts by itself with the same setting"),
    ];

    public static IEnumerable<EnquiryFact> Enquiry(HeatPump pump, double setC)
    {
        yield return Asked("Heat pump", Written.Sentence(
            $"{pump.Name}, {pump.HeatAt7W / 1000:0.#} kW of heat; kept at {setC:0.#} °C in a damp greenhouse all winter"));
        yield return Asked("Refrigerant", Written.Sentence($"class {pump.Refrigerant.ToString().ToUpperInvariant()} (ISO 817)"));
        yield return Asked("Where it goes", Purpose.Where);
        yield return Asked(
            "Its circuit", Written.Sentence($"{pump.MostA:0.#} A at most at {pump.Volts:0} V; asked of the electrician apart"));
        yield return Asked("The builder's own work", "feet or brackets, hole through the wall, lead for the melt water");
        yield return Asked(
            "Asked of you", "hang and join both units, fill, try for leaks, register where the law asks for it, and the yearly look");
    }

    private static EnquiryFact Asked(string what, string value) => new(Trade.Plumber, what, value);

    public static string Title(double watts, double setC) => Written.Sentence($"{watts / 1000:0.#} kW heat pump at {setC:0.#} °C");

    public static string StopsEarlier(double kelvins) =>
        Written.Sentence($"the heat pump stops {kelvins:0} K earlier, iced up or blown through");

    public static FormattableString Cold(double leastC, double lowestC) => lowestC >= leastC
        ? $"It works down to {leastC:0} °C outdoors; the coldest hour of the design winters has {lowestC:0.0} °C."
        : (FormattableString)$"It rests below {leastC:0} °C outdoors; the coldest hour has {lowestC:0.0} °C: something else must hold it.";

    public static IEnumerable<Dial> Dials(double setC, double wishC, double limitC)
    {
        var reason = wishC < setC
            ? Written.Sentence($"""
                It holds no less than {setC:0.#} °C, so that the house is kept warmer than the {wishC:0.#} °C that are wanted; the
                current for that is counted.
                """)
            : Written.Sentence($"Above the limit of {limitC:0.#} °C; where the setting is called frost guard, choose it by name.");
        yield return new(
            Purpose, new("Heat pump's remote control", Written.Sentence($"{setC:0.#} °C, heating, fan automatic"), OneLine(reason)));
        yield return new(Purpose, new(
            "Heat pump after a power cut",
            "starts by itself",
            "Pull the breaker once in autumn and see that it comes back with the same setting."));
    }

    public static IEnumerable<Caution> Cautions(RefrigerantClass refrigerant)
    {
        yield return new("Refrigerant", OneLine($"""
            It is under pressure, frostbites and drives out air. {Burns(refrigerant)}Connecting, filling, repairing and scrapping are
            work for licensed people, under the law on such gases of the place; the price is meant with their work, so ask for both in one
            offer. Never cut a pipe, never let any off.
            """));
        yield return new("Heat pump's current", OneLine("""
            Fixed mains in a wet house and in the rain: circuit, isolator, residual-current device and earthing by a licensed person after
            the local code and the maker's sheet.
            """));
        yield return new("Melt water", OneLine("""
            It drips litres on a frosty day, and they freeze: lead them away from paths, into gravel, with a fall and no trap, and keep the
            tray's heater whole. The indoor unit drips too when it cools.
            """));
        yield return new("Warm air stream", "Warm dry air burns leaves and dries seedlings: a metre and a half clear before the outlet.");
    }

    private static string Burns(RefrigerantClass refrigerant) => refrigerant switch
    {
        RefrigerantClass.A2l => "This one burns slowly: no flame or spark near a leak. ",
        RefrigerantClass.A3 => "This one burns like bottled gas: keep the label's distances to pits, drains and anything that sparks. ",
        _ => "",
    };

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
