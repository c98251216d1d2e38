using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.HeatPumps;

namespace DesignSearch.Layouts.Systems.HeatPumps;

/// <summary>What can be chosen of a heat pump.</summary>
public static class HeatPumpChoices
{
    /// <summary>The heat pump.</summary>
    public static PartChoice<HeatPump> Pump { get; } = new("heat_pump", "heat pump", HeatPump.Definition) { NamesTheLayout = true };

    /// <summary>What is wished of its thermostat; a unit that can hold no less than its lowest setting holds that.</summary>
    public static NumberChoice SetC { get; } = new("heat_pump_set_c", "heat pump's thermostat", "°C", 0, 25)
    {
        Standard = 2,
        Tried = [2],
        AboveLimit = true,
        Under = Pump,
    };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [Pump, SetC];
}
