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

    /// <summary>Its voltage [V].</summary>
    public double Volts { get; }

    /// <summary>The supply; null where the catalogue has none that serves.</summary>
    public PowerSupply? Supply { get; init; }

    /// <summary>True where the battery gives its voltage, without a supply between.</summary>
    public bool IsBatterys { get; init; }

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
            var controlsA = 0.0;
            for (var i = 0; i < value.Count; i++)
            {
                (Watts, MostStartA) = (Watts + value[i].Watts, Math.Max(MostStartA, MoreA(value, value[i])));
                controlsA += value[i].IsControl ? value[i].RunningA : 0;
            }

            ControlsFuseA = TimeLagFuse.SizeFor(controlsA, controlsA);
        }
    }

    /// <summary>Power while everything runs [W].</summary>
    public double Watts { get; private init; }

    /// <summary>Current while everything runs [A].</summary>
    public double RunningA => Watts / Volts;

    /// <summary>Current while everything runs and the hungriest devices start; what one control switches starts together [A].</summary>
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
                worst = Math.Max(worst, Drop(circuits[i], StartingA(circuits[i]), circuits[i].StartA));
            return worst;
        }
    }

    /// <summary>
    /// The time-lag fuse right behind the supply: above everything running with a quarter in hand and above the start [A]; 0 where no
    /// size is.
    /// </summary>
    public double MainFuseA => TimeLagFuse.SizeFor(RunningA, StartA);

    /// <summary>The one fuse of all controls [A].</summary>
    public double ControlsFuseA { get; private init; }

    /// <summary>Whether any control stands on this line.</summary>
    public bool HasControls
    {
        get
        {
            for (var i = 0; i < circuits.Count; i++)
            {
                if (circuits[i].IsControl)
                    return true;
            }

            return false;
        }
    }

    /// <summary>
    /// What the cables must bear for their fuses, as a share of what they bear, at the worst of them; infinite where no fuse size serves.
    /// </summary>
    public double WorstFuseShare
    {
        get
        {
            var worst = Share(MainFuseA, Feeder);
            for (var i = 0; i < circuits.Count; i++)
                worst = Math.Max(worst, Share(FuseBefore(circuits[i]), circuits[i].Cable));
            return worst;
        }
    }

    private double MostStartA { get; init; }

    private static double MoreA(IReadOnlyList<Circuit> all, Circuit circuit)
    {
        var more = 0.0;
        for (var i = 0; i < all.Count; i++)
            more += all[i].StartA > all[i].RunningA && all[i].SwitchedBy == circuit.SwitchedBy ? all[i].StartA - all[i].RunningA : 0;
        return more;
    }

    /// <summary>The time-lag fuse in the box before a device; all controls share one [A]; 0 where no size serves.</summary>
    /// <param name="circuit">One of <see cref="Circuits"/>.</param>
    public double FuseBefore(Circuit circuit) =>
        circuit.IsControl ? ControlsFuseA : TimeLagFuse.SizeFor(circuit.RunningA, circuit.StartA);

    /// <summary>Current in the feeder while a device starts, together with all that the same control switches [A].</summary>
    /// <param name="circuit">One of <see cref="Circuits"/>.</param>
    public double StartingA(Circuit circuit) => RunningA + MoreA(circuits, circuit);

    /// <summary>Share of the voltage lost on the way to a device [0…1].</summary>
    /// <param name="circuit">One of <see cref="Circuits"/>.</param>
    public double Drop(Circuit circuit) => Drop(circuit, RunningA, circuit.RunningA);

    private static double Share(double fuseA, Cable? cable) =>
        fuseA <= 0 ? double.PositiveInfinity : cable is null ? 0 : fuseA * TimeLagFuse.CableShare / cable.RatedA;

    private double Drop(Circuit circuit, double feederA, double ownA) =>
        ((Feeder is null ? 0 : CableDrop.Volts(Feeder, FeederM, feederA)) + (circuit.Cable is null ? 0 : CableDrop.Volts(circuit.Cable, circuit.CableM, ownA))) / Volts;
}
