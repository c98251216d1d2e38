using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Heaters;

namespace DesignSearch.Layouts.Systems.Heaters;

/// <summary>The electric stand-by heater.</summary>
public sealed class HeaterSystem : PlantSystem
{
    /// <summary>A thermostat that swings about its setting against the limit.</summary>
    public static CheckRule Band { get; } = new(
        "heater-band",
        "heater's thermostat clear of the limit",
        "The band in the catalogue; that a thermostat swings half a band to either side: common practice, no source");

    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } = [Heater.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => HeaterChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules { get; } = [Band];

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        if (task.Layout.Get(HeaterChoices.Heater) is not { } heater)
            return null;
        // Whether some mains thermostat bears its current.
        var direct = task.Shelf.Small(SmallPartRole.Thermostat).Any(p => p.Volts == SupplyPlan.MainsVolts && p.RatedA >= heater.Watts / heater.Volts);
        return new DesignedHeater(heater, new HeaterNumbers(heater.Watts, task.Layout.Get(HeaterChoices.SetC), heater.BandK) { RadiantShare = heater.RadiantShare }, direct);
    }
}
