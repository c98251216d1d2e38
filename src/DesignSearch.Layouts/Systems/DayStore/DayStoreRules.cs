using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>Rules of a day-heat store.</summary>
public static class DayStoreRules
{
    /// <summary>Room between pipes.</summary>
    public static CheckRule Spacing { get; } = new(
        "day-store-spacing", "room between the store's pipes", "Bedding all round, half a diameter: common practice, no source");

    /// <summary>Its upper set point against bought heat and vents.</summary>
    public static CheckRule Apart { get; } = new(
        "day-store-set",
        "day heat apart from bought heat and vents",
        "3 K above every thermostat, 2 K below the vents: common practice, no source");

    /// <summary>Speed in the pipes; told.</summary>
    public static CheckRule Speed { get; } = new(
        "day-store-speed",
        "speed of the air in the store's pipes",
        "Below 0.5 m/s the film is laminar, above 4 m/s the fan eats the gain: common practice, no source; told, not refused");

    /// <summary>Whether it is worth its digging; told.</summary>
    public static CheckRule Worth { get; } = new(
        "day-store-worth",
        "worth of the store's digging",
        "Three times its current, a heat pump's work, and 0.05 kWh a day and m² carried down: own choices; told, not refused");

    /// <summary>All of them, in the order in which a search counts them.</summary>
    public static IReadOnlyList<CheckRule> All { get; } = [Spacing, Apart, Speed, Worth];
}
