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
    string Stops);
