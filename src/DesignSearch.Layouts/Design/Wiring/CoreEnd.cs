namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>One core of a cable where it is joined in its box.</summary>
/// <param name="Cable">Which of several cables alike, from 1.</param>
/// <param name="Core">Number of the core in its cable, from 1.</param>
/// <param name="Terminal">The terminal, for instance X1:3; empty where it is joined at a device and not in a box.</param>
/// <param name="Carries">What is on it.</param>
public sealed record CoreEnd(int Cable, int Core, string Terminal, string Carries);
