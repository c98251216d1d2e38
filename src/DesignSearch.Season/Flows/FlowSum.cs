namespace DesignSearch.Season.Flows;

/// <summary>One flow of heat over a season.</summary>
/// <param name="Flow">The flow.</param>
/// <param name="Kwh">Heat from the account it leaves to the one it enters; negative when more ran back [kWh].</param>
/// <param name="BackKwh">Heat of the hours in which it ran back, 0 or more, where the flow is booked both ways; else 0 [kWh].</param>
public readonly record struct FlowSum(Flow Flow, double Kwh, double BackKwh = 0);
