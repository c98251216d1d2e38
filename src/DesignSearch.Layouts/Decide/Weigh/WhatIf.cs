namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A pick in weather harder than it was designed for, or without current.</summary>
/// <param name="What">What happens, in plain words.</param>
/// <param name="OutsideC">Lowest hour mean outside [°C].</param>
/// <param name="LowestAirC">Lowest hour mean of the plants' air [°C].</param>
/// <param name="FrostHours">Frost hours of that winter.</param>
/// <param name="IsWithoutMains">True where it is a failure of the mains.</param>
public sealed record WhatIf(string What, double OutsideC, double LowestAirC, int FrostHours, bool IsWithoutMains);
