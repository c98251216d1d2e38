using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.OffGrid;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>How a supply without mains is said: what is looked for, dialled in, dangerous and looked after.</summary>
internal static class OffGridWords
{
    public const string Panels = "photovoltaic panels";
    public const string PanelSwitch = "switch of the panels";
    public const string Controller = "charge controller";
    public const string Battery = "battery";
    public const string Fuse = "fuse at the battery";
    public const string Guard = "battery guard";

    // Twelve cells of lead in a bank of 24 V, each 3 mV a kelvin (offgridkit.ie, 2020).
    private const double CompensationMvPerK = 12 * 3;

    public static FormattableString WantedPanel { get; } = $"a panel of at most 60 V in the cold with a charge controller for 24 V";

    public static FormattableString WantedBattery { get; } = $"a battery";

    public static FormattableString WantedBracket { get; } = $"a bracket for a panel";

    public static Caution PanelIsLive { get; } = new("Panels", """
        A panel is live whenever light falls on it and cannot be switched off: cover it with a dark sheet while it is wired, open its
        switch before anything behind it is touched, and never pull its plugs under load. Direct current draws an arc that does not go
        out by itself. Panels are sails: two people, no wind, no ladder alone. The local code may want it joined or tested by a licensed
        person.
        """.ReplaceLineEndings(" "));

    public static Caution BatteryShort { get; } = new("Battery", """
        A battery gives thousands of amperes into a spanner: rings and watches off, insulated tools, goggles, one terminal at a time, its
        covers on. The fuse at the battery comes first and goes in last. No loose joint, nothing that burns beside it. It is heavy: two
        people, and a shelf that bears it.
        """.ReplaceLineEndings(" "));

    public static Caution Lead { get; } = new("Hydrogen and acid", """
        A lead battery gives off hydrogen while it is charged, and a spark bursts it: air to the outside at the top of its box, no flame,
        no switch or relay in the same box. Its acid burns eyes and skin: goggles and gloves, water beside you. Worn ones go back to the
        shop.
        """.ReplaceLineEndings(" "));

    public static Caution Lithium { get; } = new("Lithium battery", """
        Charged below what its maker allows, a lithium battery is spoiled and may later burn: its own guard and the charge controller's
        sensor for the battery's temperature must both stop the charge there. Never charge one that is swollen, wet or dropped.
        """.ReplaceLineEndings(" "));

    public static Caution Empty { get; } = new("Empty battery", """
        A dark month, snow on the panel or a loose joint, and nothing runs any more. What is left then is the cover, the water and the
        ground; keep fleece for the plants that matter most.
        """.ReplaceLineEndings(" ")) { Harm = Harm.Spoils };

    public static IEnumerable<Upkeep> Upkeep(BatteryPlan plan)
    {
        yield return new("Brush snow and leaves off the panels, with a soft broom from the ground.", "after every fall of snow", 1);
        yield return new("Look over brackets, anchors and the panels' cables.", "every autumn and after gales", 0.5);
        yield return new(
            "Battery: terminals clean, tight and greased; read its voltage in the morning and note it.", "every half year", 0.5);
        if (plan.Battery.Chemistry == BatteryChemistry.OpenLead)
            yield return new("Top the battery up with distilled water after it was charged, goggles on.", "every three months", 1);
    }

    public static IEnumerable<Dial> Dials(BatteryPlan plan)
    {
        var (most, keep, off, on) = Limits(plan.Battery.Chemistry);
        yield return new(OffGridPurposes.Panel, new(
            "Panels",
            Written.Sentence($"tilt {plan.TiltDeg:0}°, facing {plan.AzimuthDeg:0}°"),
            "Steep for the low sun, and so that snow slides off."));
        yield return new(OffGridPurposes.Controller, new(
            "Charge controller, end of charge",
            Written.Sentence($"{most:0.0} V, then {keep:0.0} V"),
            "Usual for this kind of battery (from memory); the maker's figure goes before it."));
        yield return new(OffGridPurposes.Controller, plan.Battery.Chemistry == BatteryChemistry.Lithium
            ? new(
                "Charge controller, least temperature",
                Written.Sentence($"{plan.Battery.LeastChargeC:0} °C"),
                "Below it the battery must not be charged; the sensor sits on the battery.")
            : new(
                "Charge controller, sensor at the battery",
                Written.Sentence($"-{CompensationMvPerK:0} mV for each kelvin above 25 °C, as much more below"),
                "A cold battery of lead wants more voltage; the sensor sits on it."));
        yield return new(OffGridPurposes.Guard, new(
            "Battery guard",
            Written.Sentence($"off at {off:0.0} V, on again at {on:0.0} V"),
            Written.Sentence(
                $"Leaves in the battery what keeps it alive; {100 * plan.Battery.UsableDepth:0} % may be taken out",
                $"(voltages from memory; the maker's go before them).")));
    }

    public static FormattableString WantedFuse(double amperes) => $"a fuse at the battery for {amperes:0} A";

    public static FormattableString WantedPanelCable(BatteryPlan plan) =>
        $"a cable for {plan.PanelsShortA:0.0} A from the panels with at most 3 % drop";

    public static FormattableString WantedBatteryCable(double amperes) => $"a cable for {amperes:0} A at the battery";

    // End of charge, kept charged, cut off, given back [V], for 24 V; from memory.
    public static (double Most, double Keep, double Off, double On) Limits(BatteryChemistry chemistry) => chemistry switch
    {
        BatteryChemistry.OpenLead => (28.8, 27.0, 23.6, 25.6),
        BatteryChemistry.SealedLead => (28.4, 27.2, 23.6, 25.6),
        _ => (28.4, 27.0, 24.8, 26.4),
    };
}
