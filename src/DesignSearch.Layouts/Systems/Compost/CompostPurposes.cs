using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>What the parts of a compost heap are for, and where they go.</summary>
internal static class CompostPurposes
{
    private const string System = "compost heap";

    public static Purpose Mix { get; } = new(
        System,
        "Its rotting is the heat; fresh for every season.",
        "in the open beside the house, away from walls that burn");

    public static Purpose Hire { get; } = new(
        System,
        "Hauls and turns tonnes, before every season and after it.",
        "at the heap");

    public static Purpose Wrap { get; } = new(
        System,
        "Keeps the core hot and the rain out; it must breathe.",
        "round the sides and over the top");

    public static Purpose Cage { get; } = new(System, "Keeps the sides upright and lets air in.", "round the sides, under the wrap");

    public static Purpose Tray { get; } = new(System, "Catches what seeps out, so that no ditch or well takes it.", "under the heap");

    public static Purpose Probe { get; } = new(
        System,
        "Shows by hand what the core really has; one sensor tells one place only.",
        "pushed into the core at several places");

    public static Purpose Coil { get; } = new(
        System,
        "Takes the heat from the core and gives it to the house.",
        "half in the heap, half along the beds; no joint inside the heap");

    public static Purpose Outdoor { get; } = new(System, "Leads out to the heap and back.", "between heap and house");

    public static Purpose Sleeve { get; } = new(
        System,
        "Keeps the heat in on its way; by itself it does not stop frost.",
        "on both pipes between heap and house, dry and out of the sun");

    public static Purpose Glycol { get; } = new(
        System,
        "Keeps the outdoor pipes whole when the pump stands; mixed with water, a tenth for spills.",
        "in all of the heap's pipes");

    public static Purpose FluidTest { get; } = new(System, "Shows whether the glycol still holds; a new set every year.", "with the tools");

    public static Purpose Header { get; } = new(
        System,
        "Takes up the growth of warm water, lets air out and shows the level.",
        "under the ridge, above the heap's highest pipe");

    public static Purpose Vent { get; } =
        new(System, "Lets air out of the loop when it is filled.", "at the highest place of the pipe outside");

    public static Purpose Cock { get; } = new(System, "One to fill, one to drain.", "at the lowest place, before and behind the pump");

    public static Purpose Strainer { get; } = new(System, "Keeps grit out of the pump.", "before the pump");

    public static Purpose Fittings { get; } =
        new(System, "Joins pump, tank and pipes.", "in the house and where the pipe comes out of the heap");

    public static Purpose Pump { get; } = new(System, "Moves the water round.", "inside the house, at the lowest place");

    public static Purpose Thermostat { get; } = new(
        System,
        "Starts the pump when the air falls to its setting.",
        "at plant height, out of the sun");

    public static Purpose CoreThermostat { get; } = new(
        System,
        "Lets the pump run only while the core is warm; in line with the house's thermostat.",
        "in the control box");

    public static Purpose CoreSensor { get; } = new(System, "Tells that thermostat the core.", "in the core of the heap");

    public static Purpose SensorDuct { get; } = new(System, "Protects that lead outdoors.", "between heap and house, apart from any mains");
}
