using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Duties;

/// <summary>What a part meets in one state of the plant, which its rating must cover.</summary>
/// <param name="State">The state.</param>
/// <param name="Rating">What it is rated for.</param>
/// <param name="Value">What it meets, in the unit of the rating.</param>
public readonly record struct Duty(PlantState State, Rating Rating, double Value)
{
    /// <summary>Heat of water, air or surface.</summary>
    /// <param name="state">The state.</param>
    /// <param name="celsius">How hot [°C].</param>
    public static Duty Heat(PlantState state, double celsius) => new(state, Rating.TemperatureC, celsius);

    /// <summary>Moment about an axis.</summary>
    /// <param name="state">The state.</param>
    /// <param name="newtonMetres">How much [N·m].</param>
    public static Duty Moment(PlantState state, double newtonMetres) => new(state, Rating.TorqueNm, newtonMetres);

    /// <summary>Current carried or switched.</summary>
    /// <param name="state">The state.</param>
    /// <param name="amperes">How much; what a contact switches counts as at the start of the device [A].</param>
    public static Duty Current(PlantState state, double amperes) => new(state, Rating.CurrentA, amperes);

    /// <summary>Voltage that it blocks.</summary>
    /// <param name="state">The state.</param>
    /// <param name="volts">How much [V].</param>
    public static Duty Voltage(PlantState state, double volts) => new(state, Rating.VoltageV, volts);

    /// <summary>Dust and water that an enclosure keeps out.</summary>
    /// <param name="state">The state.</param>
    /// <param name="code">The two digits after IEC 60529 that its place asks for.</param>
    public static Duty Kept(PlantState state, int code) => new(state, Rating.IpCode, code);

    /// <summary>Pressure of what is closed.</summary>
    /// <param name="state">The state.</param>
    /// <param name="bar">How much above that of the air [bar].</param>
    public static Duty Pressure(PlantState state, double bar) => new(state, Rating.PressureBar, bar);

    /// <summary>A dead short that it breaks.</summary>
    /// <param name="state">The state.</param>
    /// <param name="amperes">Its current [A].</param>
    public static Duty Breaking(PlantState state, double amperes) => new(state, Rating.BreakingA, amperes);

    /// <summary>Push or pull.</summary>
    /// <param name="state">The state.</param>
    /// <param name="newtons">How much [N].</param>
    public static Duty Force(PlantState state, double newtons) => new(state, Rating.ForceN, newtons);

    /// <summary>Share of its rating that is left to a part, below 0 where it is missed; -1 where its row does not say it.</summary>
    /// <param name="part">The part.</param>
    public double Margin(IPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Bears(Rating) is not { } bears)
            return -1;
        if (Rating != Rating.IpCode)
            return Spare(bears, Value);
        // Each digit of an enclosure stands for itself; more than is asked is nothing to spare of.
        var spare = Math.Min(Spare(Math.Floor(bears / 10), Math.Floor(Value / 10)), Spare(bears % 10, Value % 10));
        return spare >= 0 ? 1 : spare;
    }

    private static double Spare(double bears, double meets) =>
        Math.Abs(bears - meets) < Tiny ? 0 : (bears - meets) / Math.Max(Math.Abs(bears), Tiny);

    private const double Tiny = 1e-9;
}
