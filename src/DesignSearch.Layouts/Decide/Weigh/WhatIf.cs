using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A pick in weather harder than it was designed for, or in a night when something fails.</summary>
/// <param name="What">What happens, in plain words.</param>
/// <param name="OutsideC">Lowest hour mean outside [°C].</param>
/// <param name="LowestAirC">Lowest hour mean of the plants' air [°C].</param>
/// <param name="FrostHours">Frost hours of that winter.</param>
/// <param name="Mishap">What fails or is forgotten.</param>
public sealed record WhatIf(string What, double OutsideC, double LowestAirC, int FrostHours, Mishap Mishap);
