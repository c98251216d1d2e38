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

    // An open contact: the arm leans away from the end that it would touch.
    private const string Contact = "M18 1v6M18 23v-6l-7 -10";

    private static Markup Path(string lines) => Markup.Of($"""<path d="{lines}"/>""");

    private static Markup Filled(string full, string lines) => Markup.Of($"""<path d="{lines}"/><path class="full" d="{full}"/>""");

    private static Markup Lettered(string lines, string letters) =>
        Markup.Of($"""<path d="{lines}"/><text class="sign" x="12" y="16">{letters}</text>""");
}
