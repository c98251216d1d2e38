using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>Everything on one extra-low voltage: supply, cable to the box, fuse, devices.</summary>
/// <param name="Volts">Its voltage [V].</param>
/// <param name="Supply">The supply; null where the catalogue has none that serves.</param>
/// <param name="Feeder">Cable from supply to box; null where the catalogue has none that serves.</param>
/// <param name="FeederM">Its length one way [m].</param>
/// <param name="Circuits">The devices.</param>
public sealed record LowLine(double Volts, PowerSupply? Supply, Cable? Feeder, double FeederM, IReadOnlyList<Circuit> Circuits)
{
    /// <summary>Fuse sizes on the market [A] (common practice, no source).</summary>
    public static IReadOnlyList<double> FuseSizesA { get; } = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40];

    /// <summary>Power while everything runs [W].</summary>
    public double Watts => Circuits.Sum(c => c.Watts);

    /// <summary>Current while everything runs [A].</summary>
    public double RunningA => Watts / Volts;

    /// <summary>Current while everything runs and the hungriest device starts; the others start one after the other [A].</summary>
    public double StartA => RunningA + Circuits.Max(c => c.StartA - c.RunningA);

    /// <summary>Share of the voltage lost on the way to the worst placed device while everything runs [0…1]; 0 without a cable.</summary>
    public double WorstDrop => Circuits.Max(c => Drop(c, RunningA, c.RunningA));

    /// <summary>The same while the device itself starts.</summary>
    public double WorstStartDrop => Circuits.Max(c => Drop(c, RunningA + c.StartA - c.RunningA, c.StartA));

    /// <summary>What the thinnest cable of the line may carry [A].</summary>
    public double CablesBearA => Circuits.Select(c => c.Cable).Append(Feeder).Min(c => c?.RatedA ?? double.PositiveInfinity);

    /// <summary>The smallest fuse that carries everything; null where that is more than the thinnest cable bears.</summary>
    public double? FuseA => FuseSizesA.Where(f => f >= RunningA - 1e-9 && f <= CablesBearA).Select(f => (double?)f).FirstOrDefault();

    /// <summary>Share of the voltage lost on the way to a device [0…1].</summary>
    /// <param name="circuit">One of <see cref="Circuits"/>.</param>
    public double Drop(Circuit circuit) => Drop(circuit, RunningA, circuit.RunningA);

    private double Drop(Circuit circuit, double feederA, double ownA) =>
        ((Feeder is null ? 0 : CableDrop.Volts(Feeder, FeederM, feederA)) + (circuit.Cable is null ? 0 : CableDrop.Volts(circuit.Cable, circuit.CableM, ownA))) / Volts;
}
