using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>What can be chosen of the supply; it matters only where something needs extra-low voltage.</summary>
public static class SupplyChoices
{
    /// <summary>Power of the low-voltage supply [W]; 0 for the cheapest that serves.</summary>
    public static NumberChoice SupplyW { get; } = new(
        "supply_w", "power of the low-voltage supply, 0 for the cheapest that serves", "W", 0, 2000)
    {
        Tried = [0],
        Also = NeedsLowVoltage,
    };

    /// <summary>Cross-section of the low-voltage cable to the greenhouse [mm²]; 0 for the cheapest that serves.</summary>
    public static NumberChoice CableMm2 { get; } = new(
        "cable_mm2", "cross-section of the low-voltage cable to the greenhouse, 0 for the cheapest that serves", "mm²", 0, 25)
    {
        Tried = [0],
        Also = NeedsLowVoltage,
    };

    /// <summary>Box of the low-voltage controls.</summary>
    public static PartChoice<SmallPart> ControlBox { get; } = new("control_box", "box of the low-voltage controls", SmallPart.Definition)
    {
        Role = SmallPartRole.ControlBox,
        MayBeNone = false,
        Also = NeedsLowVoltage,
    };

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [SupplyW, CableMm2, ControlBox];

    private static bool NeedsLowVoltage(IChoices choices) => choices.Set.NeedsLowVoltage(choices);
}
