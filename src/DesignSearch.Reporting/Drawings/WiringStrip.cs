using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Reporting.Drawings;

/// <summary>A row of the wiring table as it is drawn.</summary>
/// <param name="Wire">The row.</param>
/// <param name="Component">What it is about; null for a box.</param>
/// <param name="Series">Contacts in its line, one after another.</param>
/// <param name="Inputs">Contacts on a line of their own each, where several command one relay.</param>
/// <param name="HasStops">True for a motor with end switches and diodes in its own line.</param>
/// <param name="Left">Words over its left half.</param>
/// <param name="Right">Words over its right half.</param>
/// <param name="Names">The device's name in lines.</param>
internal sealed record WiringStrip(
    Wire Wire,
    Component? Component,
    IReadOnlyList<Component> Series,
    IReadOnlyList<Component> Inputs,
    bool HasStops,
    IReadOnlyList<string> Left,
    IReadOnlyList<string> Right,
    IReadOnlyList<string> Names)
{
    /// <summary>From core to core.</summary>
    public const double CoreStep = 20;

    /// <summary>From line to line of its words.</summary>
    public const double TextStep = 14;

    private const double InputStep = 30;
    private const double StopsStep = 50;
    private const double Gap = 10;

    // What works a contact is drawn above it.
    private const double SignOver = 7;

    /// <summary>Cores of the first of its cables; none for what sits in the box or is plugged in.</summary>
    public IReadOnlyList<CoreEnd> Cores { get; } = [.. Wire.Ends.Where(e => e.Cable == 1)];

    /// <summary>From its upper edge to its first line.</summary>
    public double FirstLine => (TextStep * Math.Max(Left.Count, Right.Count)) + CoreStep + SignOver;

    /// <summary>Height of its device.</summary>
    public double DeviceHeight => Math.Max(LineAt(Rows - 1) + 20, 34 + (TextStep * Names.Count));

    /// <summary>Its height.</summary>
    public double Height => FirstLine + DeviceHeight + Gap;

    private int Rows => Math.Max(1, Math.Max(Cores.Count, Inputs.Count));

    /// <summary>From its first line to another.</summary>
    public double LineAt(int row) => row * (HasStops ? StopsStep : Inputs.Count > 1 ? InputStep : CoreStep);
}
