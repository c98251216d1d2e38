using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Reporting.Words;

/// <summary>What the pictures of a plant say beside their lines.</summary>
internal static class PictureWords
{
    public const string Pipes = "pipe, out and back";
    public const string Pipe = "pipe";
    public const string NotPrescribed =
        "Where things stand is not prescribed: they are arranged by a simple rule. Lengths and sizes are those of the bill.";

    public const string StoresDoNotFit = "The stores do not all fit in rows as arranged here: find places for them before you buy.";
    public const string OnlyArea = "square of its footprint";
    public const string Broken = "drawn broken, not to scale";
    public const string ToScale = "to scale";
    public const string NotDrawn = "inside the house, not drawn: its way is yours to find";

    public static string CableBeside(Wire wire) => wire.Count == 1
        ? Written.Sentence($"cable {wire.Tag}, {wire.CableM:0.#} m")
        : Written.Sentence($"cables {wire.Tag}, {wire.Count:0} of {wire.CableM:0.#} m each");

    public static string Metres(double metres) => Written.Sentence($"{metres:0.00} m");

    public static string Body(Body body)
    {
        var size = body switch
        {
            { Shape: BodyShape.Round } => Written.Sentence($"{body.WidthM:0.00} m across, {body.HeightM:0.00} m high"),
            { Shape: BodyShape.Buried } => Written.Sentence(
                $"{body.DepthM:0.0} m long, {body.WidthM / body.Count:0.00} m from middle to middle, {-body.LiftM:0.00} m deep"),
            { Shape: BodyShape.Frame } => Written.Sentence(
                $"{body.WidthM:0.00} m wide, {body.DepthM:0.00} m deep from above, {body.HeightM:0.00} m from lower to upper edge"),
            { IsOnlyArea: true } => Written.Sentence(
                $"{body.WidthM:0.00} m by {body.DepthM:0.00} m ({OnlyArea}), {body.HeightM:0.00} m high"),
            _ => Written.Sentence($"{body.WidthM:0.00} m by {body.DepthM:0.00} m, {body.HeightM:0.00} m high"),
        };
        return body.Count == 1 ? size : Written.Sentence($"{body.Count:0} of them, each {size}");
    }

    public static string Faces(double azimuthDeg) => Written.Sentence($"faces {azimuthDeg:0}° from true north, clockwise");

    public static string Founding(Founding founding) => founding switch
    {
        Parts.Solar.Founding.Post => "one post in one block",
        Parts.Solar.Founding.Wall => "bolted to a wall",
        Parts.Solar.Founding.Ballast => "on ballast trays",
        _ => "on feet",
    };

    public const string PlanTitle = "Plan, north above";
    public const string ElevationTitle = "Elevation, seen along the ground";
    public const string FrameTitle = "Frame and footing";
    public const string WiringTitle = "Wiring, core by core";
    public const string Boxes = "boxes";
    public const string BoxesAre = "on the wall, where the cables of the bill reach";
    public const string Dwelling = "dwelling with its fuse board";
    public const string DwellingIs = "not to scale; only the way of the cable is known";
    public const string LevelGround =
        "The ground at the collectors is drawn where heights of tank, frame and site put it: measure it before you dig.";

    public const string PipeTooShort = "The pipe run is shorter than the height between collector and tank: one of the two is wrong.";
    public const string LowerEdge = "lower edge of the collectors above the tank's water";

    public const string Joints =
        "Lengths run from joint to joint: add what your joints overlap, and what the saw takes.";

    public const string Sections =
        "Sections of timber or steel are not reckoned here: take those of the maker, or of a table for your snow and wind.";

    public const string OwnBracing = "How it is braced is our own choice.";

    public const string Formwork =
        "Where the ground does not stand by itself, four boards a block, as long as its side and as high as it is deep: not on the list.";

    public const string WiringAdvice =
        "Advice only: a licensed person decides after the local code. Drawn without current, cold and dark, with no end reached.";

    public static string Number(int number) => Written.Sentence($"{number:0}");

    public static string Letter(int letter) => letter < 26
        ? ((char)('A' + letter)).ToString()
        : Letter((letter / 26) - 1) + Letter(letter % 26);

    public static string Bar(double metres) => Written.Sentence($"{metres:0.#} m");

    public static string PlanSays(HouseSize house) => Written.Sentence(
        $"Greenhouse {house.LengthM:0.00} m along its ridge, which runs to {house.RidgeAzimuthDeg:0}°, by {house.WidthM:0.00} m.",
        $"{(house.Section is { BackWallTopM: > 0 } ? SectionWords.LeansThere : "")}").TrimEnd();

    public static string HouseHeights(HouseSize house) => house.Section is { } section
        ? SectionWords.Heights(house, section)
        : Written.Sentence($"eaves {house.EavesM:0.00} m, ridge {house.RidgeM:0.00} m high");

    public static string Stands(StandPlan frame) => Written.Sentence(
        $"tilt {frame.TiltDeg:0}°, {Faces(frame.AzimuthDeg)}{(frame.SweepM > 0 ? Sweeps(frame.SweepM) : "")}");

    public static string Mount(string name, decimal quantity, string unit, bool byArea) => byArea
        ? Written.Sentence(
            $"The stand is bought by area, {Amount(quantity, unit)} of \"{name}\": check what is delivered against these lengths,",
            $"or cut them from its timber or steel.")
        : Written.Sentence(
            $"The frame is bought ready, {quantity:0} of \"{name}\", and nothing is cut for it: the lengths are what it must have here,",
            $"for you to ask for before you buy.");

    public static string Blocks(int count, double side, double depth, double each, double all) => Written.Sentence(
        $"Concrete: {count:0} {Written.Noun(count, "block")} of {side:0.00} m by {side:0.00} m, {depth:0.00} m deep,",
        $"{each:0.000} m³ each, {all:0.00} m³ in all.");

    public static string Ballast(double each, int frames) => Written.Sentence(
        $"Ballast: {each:0} kg on {(frames == 1 ? "the frame" : "each frame")}, spread evenly over its trays.");

    public static string OnList(string name, decimal quantity, string unit) =>
        Written.Sentence($"On the shopping list for it: {Amount(quantity, unit)} of \"{name}\".");

    public static string Cut(string letter, CutLine cut) => Written.Sentence($"{letter} {cut.Count:0} × {cut.LengthM:0.00} m {cut.Name}");

    public static string Frame(StandPlan frame) => Written.Sentence(
        $"{(frame.Frames == 1 ? "One frame" : Of(frame.Frames))} with {Written.Count(frame.Collectors, "collector")},",
        $"{Founding(frame.Founding)}: {frame.WidthM:0.00} m wide, {frame.ChordM:0.00} m up the slope, tilt {frame.TiltDeg:0}°,",
        $"lower edge {frame.ClearanceM:0.00} m above the ground{Turn(frame)}.");

    public static string BoxTitle(double volts, bool hasControlBox) => volts switch
    {
        >= 100 => Written.Sentence($"mains box, {volts:0} V: licensed work"),
        > 0 => Written.Sentence($"control box, part of {volts:0} V"),
        _ => hasControlBox ? "control box, sensors and dry contacts" : "sensors, joined at what they serve",
    };

    public static string Fuse(Wire wire) => wire.FuseTag.Length == 0
        ? wire.IsSignal ? "" : "no fuse fits"
        : Written.Sentence($"{wire.FuseTag}: {wire.FuseA:0.##} A");

    public static string Cable(Wire wire)
    {
        if (wire.CableM <= 0)
            return wire.Ends.Count > 0 ? wire.Tag + ": its own lead" : "";
        var alike = wire.Count > 1 ? Written.Sentence($", {wire.Count:0} alike") : "";
        return wire.SectionMm2 > 0
            ? Written.Sentence($"{wire.Tag}: {wire.Cable}, {wire.Cores:0} × {wire.SectionMm2:0.##} mm², {wire.CableM:0.#} m{alike}")
            : Written.Sentence($"{wire.Tag}: {wire.Cable}, {wire.CableM:0.#} m{alike}");
    }

    public static string Cores(Wire wire) => string.Join("; ", wire.Ends.GroupBy(e => e.Cable).Select(g =>
        (wire.Count > 1 ? Written.Sentence($"cable {g.Key:0}: ") : "")
        + string.Join(", ", g.Select(CoreAt))));

    private static string CoreAt(CoreEnd end) =>
        Written.Sentence($"{end.Core:0} = {end.Carries}{(end.Terminal.Length > 0 ? " at " + end.Terminal : "")}");

    public static string Coil(string name) => "coil of " + name;

    private static string Of(int frames) => Written.Sentence($"{frames:0} frames, the fullest");

    private static string Sweeps(double radius) => Written.Sentence($", sweeps a circle of {radius:0.00} m radius");

    private static string Turn(StandPlan frame) => frame.Axis == TurningAxis.None
        ? ""
        : Written.Sentence($", turns {frame.LimitDeg:0}° to either side")
            + (frame.SweepM > 0 ? Sweeps(frame.SweepM) : " about its slope");

    public static string Heights(StandPlan frame, double above, double ground) => Written.Sentence(
        $"lower edge {Over(above)} the tank's water and {frame.ClearanceM:0.00} m above their ground,",
        $"which lies {Over(ground)} the floor of the house; tilt {frame.TiltDeg:0}°");

    public static string PipeIs(double metres, bool isBroken) =>
        Written.Sentence($"{metres:0.0} m one way, {(isBroken ? Broken : ToScale)}");

    public static string CableIs(double metres) =>
        Written.Sentence($"cable of {metres:0.0} m to the boxes, {Broken}; how deep it lies the local code says");

    private static string Over(double metres) =>
        Written.Sentence($"{Math.Abs(metres):0.00} m {(metres < 0 ? "below" : "above")}");

    public static string DeviceName(Wire wire, Component? component) => component is { Symbol: Symbol.Relay } && wire.Ends.Count == 0
        ? Coil(component.Name)
        : component?.Name ?? wire.Device;

    public static string Return(Wire wire) => wire.Volts >= SupplyPlan.MainsVolts ? "N" : "0 V";

    public static string CoreIs(CoreEnd end) => Written.Sentence($"{end.Core:0}  {end.Carries}");

    public static string WireIs(Wire wire)
    {
        string[] parts = [wire.Device, wire.Volts > 0 ? Written.Sentence($"{wire.Volts:0} V") : "", Fuse(wire), Cable(wire), Cores(wire)];
        return string.Join("; ", parts.Where(p => p.Length > 0)) + ".";
    }

    public const string ChangesOver = ", which changes + and 0 V over";
    public const string SourceTitle = "charge controller: panels and battery on clamps of their own";
    public const string GoesOn = ", goes on";

    public static string InBox(Wire wire)
    {
        var count = wire.Count > 1 ? Written.Sentence($"{wire.Count:0} of \"{wire.Device}\"") : $"\"{wire.Device}\"";
        return $"Also there: {count}, {wire.SwitchedBy}. {wire.Stops}";
    }

    public static string FeederFrom(Wire wire) => $"beginning of {wire.Tag}: {wire.Device}";

    public static bool IsContact(string carries) => carries is "contact in" or "contact out" or "signal" or "L in" or "L out" or "a" or "b";

    public static string Switches(string fuse, IReadOnlyList<(string Name, string Terminals)> contacts, bool isNumbered)
    {
        var by = contacts.Select((c, i) =>
            (isNumbered ? Number(i + 1) + " " : "") + "by " + c.Name + (c.Terminals.Length > 0 ? $" ({c.Terminals})" : ""));
        return string.Join("; ", by.Prepend(fuse).Where(w => w.Length > 0));
    }

    public static string Amount(decimal quantity, string unit) => Written.Sentence($"{quantity:0.##} ") + unit switch
    {
        "m2" => "m²",
        "m3" => "m³",
        "piece" or "set" => Written.Noun(quantity == 1 ? 1 : 2, unit),
        _ => PlainText.Cut(unit, 24),
    };
}
