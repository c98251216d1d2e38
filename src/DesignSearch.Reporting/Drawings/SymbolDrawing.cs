using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The signs, each in a square of 24: after IEC 60617 and ISO 14617, from memory.</summary>
internal static class SymbolDrawing
{
    /// <summary>The sign of a component; nothing for one that is a box with its name.</summary>
    /// <param name="symbol">Which sign.</param>
    public static Markup Of(Symbol symbol) => symbol switch
    {
        Symbol.Collector => Path("M2 4h20v16h-20zM5 16v-8h4v8h4v-8h4v8M-3 -3l6 6m0 -4v4h-4M3 -6l6 6m0 -4v4h-4"),
        Symbol.Tank => Path("M5 2v20h14v-20M5 7h14"),
        Symbol.Pump => Path("M12 3a9 9 0 1 0 0.01 0zM8 5l13 7l-13 7"),
        Symbol.Valve => Path("M2 6v12l20 -12v12z"),
        Symbol.CheckValve => Filled("M2 6v12l10 -6z", "M22 6v12l-10 -6z"),
        Symbol.ReliefValve => Path("M2 12v10l20 -10v10zM12 17v-6l-3 -2l6 -2l-6 -2l3 -2"),
        Symbol.Vessel => Path("M12 3a9 9 0 1 0 0.01 0zM3 12h18"),
        Symbol.Vent => Path("M12 22v-10M6 12h12l-6 -9z"),
        Symbol.Motor => Lettered("M12 3a9 9 0 1 0 0.01 0z", "M"),
        Symbol.Fan => Path("M12 3a9 9 0 1 0 0.01 0zM12 12c-6 -8 6 -8 0 0c8 -3 6 8 0 0c-4 8 -9 1 0 0"),
        Symbol.Heater => Path("M1 7h22v10h-22zM7 7v10M12 7v10M17 7v10"),
        Symbol.Thermostat => Lettered(Contact, "θ"),
        Symbol.LightSensor => Path(Contact + "M2 4l6 6m0 -4v4h-4M2 -2l6 6m0 -4v4h-4"),
        Symbol.LimitSwitch => Filled("M10 9l7 3l-5 4z", Contact),
        Symbol.Clock => Path(Contact + "M6 3a5 5 0 1 0 0.01 0zM6 5v3h3"),
        Symbol.Sensor => Lettered("M12 3a9 9 0 1 0 0.01 0z", "T"),
        Symbol.Relay => Path("M2 7h20v10h-20zM12 1v6M12 17v6"),
        Symbol.Controller => Lettered("M3 3h18v18h-18z", "ΔT"),
        _ => Markup.None,
    };

    /// <summary>A fuse in a line to the right.</summary>
    public static Markup Fuse { get; } = Path("M0 12h24M3 8h18v8h-18z");

    /// <summary>A circuit breaker in a line to the right.</summary>
    public static Markup Breaker { get; } = Path("M0 12h7M4 9l6 6M10 9l-6 6M24 12h-7l-10 -6");

    /// <summary>A diode that lets current go to the right.</summary>
    public static Markup Diode { get; } = Path("M0 12h24M7 6v12l10 -6zM17 6v12");

    /// <summary>A diode that lets current go to the left.</summary>
    public static Markup DiodeBack { get; } = Path("M0 12h24M17 6v12l-10 -6zM7 6v12");

    /// <summary>A relay's coil in a line to the right.</summary>
    public static Markup Coil { get; } = Path("M0 12h7M24 12h-7M7 3h10v18h-10z");

    /// <summary>A socket with its plug, in a line to the right.</summary>
    public static Markup Socket { get; } = Path("M0 12h6M14 4a8 8 0 0 0 0 16M14 8v8M14 12h10");

    /// <summary>Protective earth at the beginning of a line to the right.</summary>
    public static Markup Earth { get; } = Path("M24 12h-12M12 4v16M8 7v10M4 10v4");

    /// <summary>A contact that opens when the end of a way is reached.</summary>
    public static Markup EndSwitch { get; } = Filled("M13 5l4 -5l3 5z", "M0 12h7v-9M24 12h-7l-11 -7");

    /// <summary>An open contact in a line to the right, with the sign of what works it.</summary>
    /// <param name="symbol">What works it.</param>
    public static Markup ContactOf(Symbol symbol) => symbol switch
    {
        Symbol.Thermostat => LetteredAbove("θ"),
        Symbol.Controller => LetteredAbove("ΔT"),
        Symbol.LightSensor => Path(Closer + "M2 -6l5 5m0 -4v4h-4M8 -8l5 5m0 -4v4h-4"),
        Symbol.Clock => Path(Closer + "M10 -9a5 5 0 1 0 0.01 0zM10 -7v3h3"),
        Symbol.LimitSwitch => EndSwitch,
        _ => Path(Closer),
    };

    private const string Closer = "M0 12h7M24 12h-7l-10 -6";

    // An open contact: the arm leans away from the end that it would touch.
    private const string Contact = "M18 1v6M18 23v-6l-7 -10";

    private static Markup Path(string lines) => Markup.Of($"""<path d="{lines}"/>""");

    private static Markup Filled(string full, string lines) => Markup.Of($"""<path d="{lines}"/><path class="full" d="{full}"/>""");

    private static Markup Lettered(string lines, string letters) =>
        Markup.Of($"""<path d="{lines}"/><text class="sign" x="12" y="16">{letters}</text>""");

    private static Markup LetteredAbove(string letters) =>
        Markup.Of($"""<path d="{Closer}"/><text class="sign" x="12" y="2">{letters}</text>""");
}
