namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>The way of a dead short on the mains, at the end of a cable.</summary>
/// <param name="To">Where the cable ends.</param>
/// <param name="Ohm">Impedance of the loop, copper warm [Ω].</param>
/// <param name="LargestOhm">The largest at which the breaker trips at once [Ω].</param>
/// <param name="BreakerA">The breaker [A].</param>
public sealed record FaultLoop(string To, double Ohm, double LargestOhm, double BreakerA);
