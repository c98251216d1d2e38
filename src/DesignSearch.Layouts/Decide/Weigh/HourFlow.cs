namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>One flow of heat in one hour.</summary>
/// <param name="Name">In plain words.</param>
/// <param name="Watts">Mean, above zero into the house [W].</param>
public sealed record HourFlow(string Name, double Watts);
