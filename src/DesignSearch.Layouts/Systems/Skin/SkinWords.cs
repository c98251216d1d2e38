using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Skin;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>How the skin of the house is said.</summary>
internal static class SkinWords
{
    private const string Reversed = " through a reversing interlock";
    public const string MotorStops = "limit switches and their diodes built in; both directions can never be on together";

    public const string CoverName = "night cover";
    public const string LightSensorName = "light sensor of the night cover";
    public const string TimerName = "timer of the night cover";
    public const string InterlockName = "interlocks of the night cover";
    public const string LiningName = "lining";
    public const string SealsName = "seals";
    public const string EdgeName = "edge board";
    public const string WindBreakName = "wind break";

    private const string System = "house";

    public static string Face(HouseShape shape, FaceKind kind) => (shape, kind) switch
    {
        (HouseShape.LeanTo, FaceKind.LongWall) => "curtain of the front",
        (HouseShape.LeanTo, FaceKind.Roof) => "the roof",
        (HouseShape.Tunnel, FaceKind.Roof) => "one side of the hoop",
        (HouseShape.Tunnel, FaceKind.OtherRoof) => "the other side of the hoop",
        (HouseShape.Tunnel, FaceKind.End) => "curtain of one end",
        (HouseShape.Tunnel, FaceKind.OtherEnd) => "curtain of the other end",
        (_, FaceKind.LongWall) => "curtain of one long wall",
        (_, FaceKind.OtherLongWall) => "curtain of the other long wall",
        (_, FaceKind.End) => "curtain of one gable",
        (_, FaceKind.OtherEnd) => "curtain of the other gable",
        (_, FaceKind.Roof) => "one roof side",
        _ => "the other roof side",
    };

    public const string NoWallForBoard =
        "no board: it lines a long wall away from the sun, and this house has none that is covered; use a lining that lets light through";

    public static Purpose Lining { get; } =
        new(System, "Keeps a layer of still air under the cover, day and night; 5 % for cuts included.", "inside, under roof and walls");

    public static Purpose WallBoard { get; } =
        new(System, "Insulates the wall that sees no winter sun; 5 % for cuts included.", "inside of the long wall away from the sun");

    public static Purpose NightCover { get; } =
        new(System, "Closed from dusk to dawn it keeps the night's heat in; 5 % for cuts included.", "under the roof and down the walls");

    public static Purpose CoverMotor { get; } = new(
        System,
        "Draws the cover at dusk and opens it at dawn.",
        "one at each side of the roof and at each wall's curtain, more where one cannot draw it");

    public static Purpose Interlock { get; } =
        new(System, "Bears the cover motors, one for each; both directions can never be on together.", "in the control box");

    public static Purpose HandSwitch { get; } =
        new(System, "Draws the cover by hand, stops it, or leaves it to light sensor or timer.", "in the control box");

    public static Purpose CoverWires { get; } = new(System, "Carries the cover and keeps its edges closed.", "under the roof");

    public static Purpose LightSensor { get; } =
        new(System, "Tells dusk from day; it works the interlocks, not the motors.", "outside, facing the open sky");

    public static Purpose Timer { get; } =
        new(System, "Closes and opens the cover by the clock, set month by month, through the interlocks.", "in the control box");

    public static Purpose Sealing { get; } = new(
        System,
        "Stops warm air from leaking out at door, vents and base.",
        "door, vents, laps and base");

    public static Purpose PerimeterBoard { get; } =
        new(System, "Keeps the warmth of the ground from leaving at the edge.", "dug in round the outside of the floor");

    public static Purpose WindBreak { get; } = new(
        System,
        "Takes the wind off the house, so that less air is blown through its gaps.",
        "along the two windward sides, two to five times its height away, clear of the noon sun");

    // Wet snow 4 kN/m³: EN 1991-1-3, annex E (from memory).
    private const double WetSnowKgPerM3 = 400;
    private const double DeepM = 0.25;

    private static Caution Damp { get; } = new(
        "Damp", "A tight, covered house is wet: vent at noon or mould takes the plants.")
    { Harm = Harm.Spoils };

    private static Caution Snow { get; } = new("Snow on the house", Written.Sentence($"""
        A roof that is kept cold by a lining or cover no longer melts its snow. {100 * DeepM:0} cm of wet snow weigh some
        {WetSnowKgPerM3 * DeepM:0} kg on each square metre: know what the house was built for, by EN 1991-1-3 or the local rule. Brush it
        off early, from the ground; in heavy snow leave the cover open and the house warm, and do not go in under a loaded roof.
        """).ReplaceLineEndings(" "));

    private static Caution Film { get; } = new(
        "Film and cover",
        "Film and screens burn and drip: no flame, welding or hot lamp beneath them, and every heater's clear space kept.");

    public static IEnumerable<Caution> Cautions(Skin skin, bool hasSinglePanes)
    {
        var isUnderRoof = skin.NightCover is not null || skin.Lining is { Transmittance: > 0 };
        var isTight = skin.Lining is not null || skin.Sealing is not null;
        if (isUnderRoof || isTight)
            yield return Damp;
        if (isUnderRoof)
        {
            yield return Snow;
            yield return Film;
            yield return Dangers.Height;
            if (hasSinglePanes)
                yield return Dangers.Glass;
        }

        if (skin.NightCover is { IsAutomatic: true })
            yield return CoverMoves;
        if (isTight)
            yield return Dangers.CarbonMonoxide;
    }

    private static Caution CoverMoves { get; } = new("Moving cover", """
        The night cover moves by itself at dusk and dawn: no ladder, hair, hand or child near wires and tubes, and its current off before
        anyone works at it.
        """.ReplaceLineEndings(" "));

    public static IEnumerable<CommissioningStep> Steps(PaperGround ground) =>
    [
        .. ground.Try(
            CoverMotor, "run each screen to both ends by its hand switch",
            "its own limit switch stops it each time, and it comes back from there; edges closed, nothing caught"),
        .. ground.Try(
            Interlock, "ask for one way by the hand switch and the other by light sensor or timer", "only one of its coils is ever in"),
        .. ground.Try(HandSwitch, "turn it through its places", "draws, stops, opens, and leaves the cover to light sensor or timer"),
        .. ground.Try(
            Timer, "set it a minute ahead of closing", "every screen closes at that minute; clock and times of the month set back"),
        .. ground.Try(LightSensor, "cover it with a cap", "every screen closes, and opens again when the cap is off"),
    ];

    public static IEnumerable<string> Title(Skin skin)
    {
        if (skin.NightCover is not null)
            yield return "night cover";
        if (skin.Lining is not null)
            yield return "lining";
        if (skin.Sealing is not null)
            yield return "seals";
        if (skin.PerimeterBoard is not null)
            yield return "edge board";
        if (skin.WindBreak is not null)
            yield return "wind break";
    }

    public static string MotorDevice(string face, int motor) =>
        motor == 0 ? $"cover motor, {face}" : Written.Sentence($"cover motor {motor + 1}, {face}");

    public static string MotorSwitch(bool byClock) => (byClock ? "timer" : "light sensor") + Reversed;

    public static Setting TimerSetting(IReadOnlyList<(int Month, int Closes, int Opens)> times) => new(
        "Timer of the night cover",
        string.Join("; ", times.Select(
            t => Written.Month(t.Month) + ": closes " + Written.OClock(t.Closes) + ", opens " + Written.OClock(t.Opens)))
            + " (standard time)",
        "The timer goes by the clock, and dusk moves: set it anew each month. It closes on a bright evening too.");

    public static Setting NightCoverSetting(CoverDrive drive) => new(
        "Night cover",
        drive switch
        {
            CoverDrive.Sensor => "closes at dusk, opens at dawn",
            CoverDrive.Clock => "closes and opens by its timer",
            _ => "close at dusk, open after sunrise, every day",
        },
        "Nearly all of the heat is lost at night; open by day it costs no light.");

    public static Setting Trench(double depthM, double thicknessMm) => new(
        "Edge board in the ground",
        Written.Sentence($"{depthM:0.0#} m down from the floor, {thicknessMm:0} mm thick, all round"),
        "Less deep it loses more; look for pipes and cables before you dig, and shore a trench that is deeper than your knee.");

    public static IEnumerable<Upkeep> Upkeep(Skin skin)
    {
        if (skin.NightCover is { IsAutomatic: true })
            yield return new("Run the night cover once by hand switch; look at wires, edges and limit switches.", "every autumn", 1);
        else if (skin.NightCover is not null)
            yield return new("Draw the night cover and open it again.", Design.Upkeep.EveryDay, 25) { IfForgotten = Mishap.CoverLeftOpen };
        if (skin.Lining is not null)
            yield return new("Look for torn lining and wash what lets light through.", "every autumn", 2);
        if (skin.Sealing is not null)
            yield return new("Feel for draughts at door, vents and base, and renew seals.", "every autumn", 1);
        if (skin.WindBreak is not null)
            yield return new("Retie the net or cut the hedge.", "every autumn", 1);
    }
}
