using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Heaters;

namespace DesignSearch.Layouts.Systems.Heaters;

/// <summary>What can be chosen of the stand-by heater.</summary>
public static class HeaterChoices
{
    /// <summary>The heater.</summary>
    public static PartChoice<Heater> Heater { get; } = new("heater", "stand-by heater", Parts.Heaters.Heater.Definition) { NamesTheLayout = true };

    /// <summary>Its thermostat.</summary>
    public static NumberChoice SetC { get; } =
        new("heater_set_c", "stand-by heater's thermostat", "°C", 0, 25) { Standard = 2, Tried = [2, 3], AboveLimit = true, Under = Heater };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [Heater, SetC];
}
