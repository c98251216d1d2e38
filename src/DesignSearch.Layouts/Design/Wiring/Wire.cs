using System.Text.Json.Serialization;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>One row of the wiring table. Advice only: a licensed person decides.</summary>
/// <param name="Device">The device, or the cable that feeds a box.</param>
/// <param name="Volts">Voltage [V].</param>
/// <param name="CurrentA">Current while it runs [A].</param>
/// <param name="StartA">Current while it starts [A].</param>
/// <param name="Cable">Cable as the catalogue names it; says so where there is none.</param>
/// <param name="Cores">Its conductors; 0 without a cable.</param>
/// <param name="CableM">Its length one way [m].</param>
/// <param name="CableBearsA">What the cable may carry after the catalogue, an order of magnitude [A]; 0 without a cable.</param>
/// <param name="DropPercent">Voltage lost from the source to here while everything runs [%].</param>
/// <param name="FuseA">Time-lag fuse or breaker before it, never above what the cable bears [A]; 0 where none fits.</param>
/// <param name="IsSignal">True for what has no fuse: a sensor that carries no current, or panels whose short circuit the cable bears.</param>
/// <param name="SwitchedBy">What switches it.</param>
/// <param name="Stops">Limit switches and interlock, or what a control does; empty where there is nothing to say.</param>
public sealed record Wire(
    string Device,
    double Volts,
    double CurrentA,
    double StartA,
    string Cable,
    int Cores,
    double CableM,
    double CableBearsA,
    double DropPercent,
    double FuseA,
    bool IsSignal,
    string SwitchedBy,
    string Stops)
{
    /// <summary>Number of its cable, for instance W3; empty without one.</summary>
    public string Tag { get; init; } = "";

    /// <summary>Number of its fuse or breaker, for instance F2; controls share one. Empty without one.</summary>
    public string FuseTag { get; init; } = "";

    /// <summary>How many alike there are, each with a cable of its own.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Cross-section of a core [mm²]; 0 without a cable.</summary>
    public double SectionMm2 { get; init; }

    /// <summary>True for the cable that feeds a box; its fuse or breaker stands where it begins.</summary>
    public bool IsFeeder { get; init; }

    /// <summary>
    /// True where its cable ends at a device and not in a box: an end switch in the motor's own circuit, panels and battery at their
    /// charge controller.
    /// </summary>
    public bool EndsAtDevice { get; init; }

    /// <summary>Where its cores are joined in the box; empty without a cable.</summary>
    public IReadOnlyList<CoreEnd> Ends { get; init; } = [];

    /// <summary>What a control is bought for; null for a device.</summary>
    public Purpose? Purpose { get; init; }

    /// <summary>What its cores carry, by their numbers, as <see cref="CoreNumbers"/> says.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> Carries { get; init; } = [];
}
