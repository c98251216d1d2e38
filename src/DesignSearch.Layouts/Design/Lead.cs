namespace DesignSearch.Layouts.Design;

/// <summary>The cable of a switch or sensor that stands outside its box.</summary>
/// <param name="Metres">Its length one way [m]; 0 for none.</param>
/// <param name="Cores">Conductors that it wants.</param>
public readonly record struct Lead(double Metres, int Cores)
{
    /// <summary>What it switches through its own cable, at the start [A]; 0 for a signal.</summary>
    public double StartA { get; init; }

    /// <summary>True where it goes to the device that it stops, and not back to the box.</summary>
    public bool EndsAtDevice { get; init; }
}
