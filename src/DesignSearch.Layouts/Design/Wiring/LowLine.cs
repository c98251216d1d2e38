using DesignSearch.Parts.Electrics;

namespace DesignSearch.Layouts.Design.Wiring;

/// <summary>Everything on one extra-low voltage: supply, cable to the box, fuse, devices.</summary>
public sealed record LowLine
{
    private readonly IReadOnlyList<Circuit> circuits = [];

    /// <summary>Makes a line.</summary>
    /// <param name="volts">Its voltage [V].</param>
    /// <param name="feederM">Cable from supply to box, one way [m].</param>
    /// <param name="circuits">The devices, one or more.</param>
    public LowLine(double volts, double feederM, IReadOnlyList<Circuit> circuits) => (Volts, FeederM, Circuits) = (volts, feederM, circuits);

    /// <summary>Fuse sizes on the market [A] (common practice, no source).</summary>
    public static IReadOnlyList<double> FuseSizesA { get; } = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40];

    /// <summary>Its voltage [V].</summary>
    public double Volts { get; }

    /// <summary>The supply; null where the catalogue has none that serves.</summary>
    public PowerSupply? Supply { get; init; }

    /// <summary>Cable from supply to box; null where the catalogue has none that serves.</summary>
    public Cable? Feeder { get; init; }

    /// <summary>Its length one way [m].</summary>
    public double FeederM { get; }

    /// <summary>The devices, one or more.</summary>
    public IReadOnlyList<Circuit> Circuits
    {
        get => circuits;
        init
        {
            circuits = value;
            // Summed up here, for a search asks for them many times.
            (Watts, MostStartA) = (0, double.NegativeInfinity);
            for (var i = 0; i < value.Count; i++)
                (Watts, MostStartA) = (Watts + value[i].Watts, Math.Max(MostStartA, value[i].StartA - value[i].RunningA));
        }
    }

    /// <summary>Power while everything runs [W].</summary>
    public double Watts { get; private init; }

    /// <summary>Current while everything runs [A].</summary>
    public double RunningA => Watts / Volts;

    /// <summary>Current while everything runs and the hungriest device starts; the others start one after the other [A].</summary>
    public double StartA => RunningA + MostStartA;

    /// <summary>Share of the voltage lost on the way to the worst placed device while everything runs [0…1]; 0 without a cable.</summary>
    public double WorstDrop
    {
        get
        {
            var worst = double.NegativeInfinity;
            for (var i = 0; i < circuits.Count; i++)
                worst = Math.Max(worst, Drop(circuits[i]));
            return worst;
        }
    }

    /// <summary>The same while the device itself starts.</summary>
    public double WorstStartDrop
    {
        get
        {
            var worst = double.NegativeInfinity;
            for (var i = 0; i < circuits.Count; i++)
                worst = Math.Max(worst, Drop(circuits[i], RunningA + circuits[i].StartA - circuits[i].RunningA, circuits[i].StartA));
            return worst;
        }
    }

    /// <summary>What the thinnest cable of the line may carry [A].</summary>
    public double CablesBearA
    {
        get
        {
            var least = Feeder?.RatedA ?? double.PositiveInfinity;
            for (var i = 0; i < circuits.Count; i++)
                least = Math.Min(least, circuits[i].Cable?.RatedA ?? double.PositiveInfinity);
            return least;
        }
    }

    /// <summary>The smallest fuse that carries everything; null where that is more than the thinnest cable bears.</summary>
    public double? FuseA => FuseFor(RunningA) is var fuse and > 0 && fuse <= CablesBearA ? fuse : null;

    private double MostStartA { get; init; }

    /// <summary>The smallest fuse that carries a current [A]; 0 where none does.</summary>
    public static double FuseFor(double amperes)
    {
        foreach (var size in FuseSizesA)
        {
            if (size >= amperes - 1e-9)
                return size;
        }

        return 0;
    }

    /// <summary>Share of the voltage lost on the way to a device [0…1].</summary>
    /// <param name="circuit">One of <see cref="Circuits"/>.</param>
    public double Drop(Circuit circuit) => Drop(circuit, RunningA, circuit.RunningA);

    private double Drop(Circuit circuit, double feederA, double ownA) =>
        ((Feeder is null ? 0 : CableDrop.Volts(Feeder, FeederM, feederA)) + (circuit.Cable is null ? 0 : CableDrop.Volts(circuit.Cable, circuit.CableM, ownA))) / Volts;
}
