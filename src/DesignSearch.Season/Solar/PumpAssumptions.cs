using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Solar;

/// <summary>What the control of the collector's pump takes for granted; how it decides stands in <see cref="PumpControl{T}"/>.</summary>
internal static class PumpAssumptions
{
    /// <summary>Light on the collector's plane below which the pump rests.</summary>
    public static AssumptionEntry LightGate { get; } = new(
        "pump_light_gate_w_per_m2", "W/m² on the collector's plane", 20, 0, 400,
        "own choice: a light sensor that goes off at 20 W/m²; thinner sun warms no collector");

    /// <summary>Further light until the sensor holds the pump back no more.</summary>
    public static AssumptionEntry LightBand { get; } = new(
        "pump_light_band_w_per_m2", "W/m² on the collector's plane", 20, 1, 400, "own choice: the same sensor goes on at 40 W/m²");

    /// <summary>Last kelvins of the tank's top under its ceiling over which the pump is brought to rest.</summary>
    public static AssumptionEntry CeilingFade { get; } = new(
        "pump_ceiling_fade_k", "K", 2, 0.1, 20,
        "own choice: switching difference of the thermostat at the tank's top, and of the lock-out at the collector");

    /// <summary>Where between the stopping and the starting difference the duty holds the collector.</summary>
    public static AssumptionEntry HoldShare { get; } = new(
        "pump_hold_share", "share of the way from the stopping to the starting difference", 0.25, 0, 1,
        "fitted to the hours of switching relays in a stand-in model; the relays of the tests still meet it best");

    /// <summary>Least warming of the water in the collector that the duty reckons with.</summary>
    public static AssumptionEntry LeastLift { get; } = new(
        "pump_least_lift_k", "K", 0.05, 0.001, 1, "own choice: keeps the duty finite where the water comes back as warm as it leaves");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } = [LightGate, LightBand, CeilingFade, HoldShare, LeastLift];

    /// <summary>Collector above the tank's bottom that the pump holds, between those at which a relay stops and starts it [K].</summary>
    /// <param name="stopK">A relay stops below this difference [K].</param>
    /// <param name="startK">A relay starts above this one [K].</param>
    /// <param name="assumptions">Gives the share of the way.</param>
    public static double HoldK(double stopK, double startK, SeasonAssumptions assumptions) =>
        stopK + (startK - stopK) * assumptions[HoldShare];
}
