using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>Where the systems of a layout draw their components and joints, each from the lines that it listed.</summary>
/// <param name="parts">Everything that the layout needs.</param>
public sealed class SchemeSketch(IReadOnlyList<NeededPart> parts)
{
    private readonly ILookup<Purpose, NeededPart> byPurpose = parts.ToLookup(p => p.Purpose);
    private readonly List<Component> components = [];
    private readonly List<Joint> joints = [];

    /// <summary>What was drawn so far.</summary>
    public Scheme Scheme => new(components, joints);

    /// <summary>A component with that name, drawn before; null without.</summary>
    /// <param name="name">Its name.</param>
    public Component? Find(string name) => components.Find(c => c.Name == name);

    /// <summary>Draws what was listed for a purpose.</summary>
    /// <param name="purpose">What for and where.</param>
    /// <param name="name">What it is in this plant.</param>
    /// <param name="symbol">How it is drawn.</param>
    /// <param name="spot">Where it stands.</param>
    /// <param name="terminals">Where it is joined; something must be joined to each.</param>
    /// <returns>The component; null where nothing was listed for it.</returns>
    public Component? Put(Purpose purpose, string name, Symbol symbol, Spot spot, params ReadOnlySpan<Terminal> terminals)
    {
        var lines = byPurpose[purpose].ToList();
        if (lines.Count == 0)
            return null;
        var relays = Ids([NeedsWords.RelayBetween(purpose)]);
        var count = lines.Sum(l => l.Quantity);
        return Keep(
            new(name, purpose.System, symbol, spot, lines[0].Part.Id, count, [.. terminals], relays) { Purpose = purpose });
    }

    /// <summary>Draws what water runs through, inside the house.</summary>
    /// <inheritdoc cref="Put"/>
    public Component? PutInLine(Purpose purpose, string name, Symbol symbol) =>
        Put(purpose, name, symbol, Spot.House, Terminal.Inlet, Terminal.Outlet);

    /// <summary>Draws a pump, inside the house.</summary>
    /// <inheritdoc cref="Put"/>
    public Component? PutPump(Purpose purpose, string name) =>
        Put(purpose, name, Symbol.Pump, Spot.House, Terminal.Inlet, Terminal.Outlet, Terminal.Power, Terminal.Told);

    /// <summary>Draws what sits at the end of a short pipe from another component, and joins the two.</summary>
    /// <param name="from">The other; null for none, and then it is drawn by itself.</param>
    /// <param name="fromTerminal">Its terminal.</param>
    /// <param name="purpose">What for and where.</param>
    /// <param name="name">What it is in this plant.</param>
    /// <param name="symbol">How it is drawn.</param>
    /// <param name="spot">Where it stands.</param>
    public void PutOn(Component? from, Terminal fromTerminal, Purpose purpose, string name, Symbol symbol, Spot spot = Spot.House) =>
        Join(from, fromTerminal, Put(purpose, name, symbol, spot, Terminal.Inlet), Terminal.Inlet);

    /// <summary>Draws what senses or counts and tells it.</summary>
    /// <inheritdoc cref="Put"/>
    public Component? PutTeller(Purpose purpose, string name, Symbol symbol, Spot spot = Spot.House) =>
        Put(purpose, name, symbol, spot, Terminal.Tells);

    /// <summary>Draws what is told by one and tells another, inside the house.</summary>
    /// <inheritdoc cref="Put"/>
    public Component? PutControl(Purpose purpose, string name, Symbol symbol) =>
        Put(purpose, name, symbol, Spot.House, Terminal.Told, Terminal.Tells);

    /// <summary>Draws what was listed for a purpose as several components, each with its share of it.</summary>
    /// <param name="purpose">What for and where.</param>
    /// <param name="names">What each is in this plant.</param>
    /// <param name="symbol">How they are drawn.</param>
    /// <param name="spot">Where they stand.</param>
    /// <param name="terminals">Where each is joined; something must be joined to each.</param>
    /// <returns>The components; none where nothing was listed.</returns>
    public IReadOnlyList<Component> PutEach(
        Purpose purpose, IReadOnlyList<string> names, Symbol symbol, Spot spot, params ReadOnlySpan<Terminal> terminals)
    {
        ArgumentNullException.ThrowIfNull(names);
        var put = new List<Component>();
        foreach (var name in names)
        {
            if (Put(purpose, name, symbol, spot, terminals) is { } each)
                put.Add(components[^1] = each with { Count = each.Count / names.Count });
        }

        return put;
    }

    /// <summary>Draws one of several parts that were listed for the same purpose.</summary>
    /// <param name="purpose">What for and where.</param>
    /// <param name="part">The part; null where the catalogue lacks it.</param>
    /// <param name="name">What it is in this plant.</param>
    /// <param name="symbol">How it is drawn.</param>
    /// <param name="spot">Where it stands.</param>
    /// <param name="terminals">Where it is joined; something must be joined to each.</param>
    /// <returns>The component; null where it was not listed.</returns>
    public Component? PutOne(
        Purpose purpose, IPart? part, string name, Symbol symbol, Spot spot, params ReadOnlySpan<Terminal> terminals) =>
        byPurpose[purpose].FirstOrDefault(l => l.Part.Id == part?.Id) is { } line
            ? Keep(new(name, purpose.System, symbol, spot, line.Part.Id, line.Quantity, [.. terminals], []) { Purpose = purpose })
            : null;

    /// <summary>Draws a thing that is there anyway, once.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="spot">Where it stands.</param>
    /// <param name="terminals">Where it is joined; something must be joined to each.</param>
    public Component There(string name, Spot spot, params ReadOnlySpan<Terminal> terminals) =>
        Find(name) ?? Keep(new(name, "", Symbol.Plain, spot, "", 1, [.. terminals], []));

    /// <summary>Adds parts that belong to a component and are not drawn by themselves.</summary>
    /// <param name="component">The component; null for none, and then nothing is added.</param>
    /// <param name="with">Their purposes.</param>
    public void Add(Component? component, params ReadOnlySpan<Purpose> with)
    {
        var at = component is null ? -1 : components.FindIndex(c => c.Name == component.Name);
        if (at >= 0)
            components[at] = components[at] with { With = [.. components[at].With, .. Ids(with)] };
    }

    /// <summary>Joins two components; nothing where either is missing.</summary>
    /// <param name="from">Where it comes from.</param>
    /// <param name="fromTerminal">Its terminal.</param>
    /// <param name="to">Where it goes.</param>
    /// <param name="toTerminal">Its terminal, of the same medium.</param>
    /// <param name="lengthM">Length one way [m]; 0 where one sits on the other.</param>
    /// <param name="by">Purposes of pipes and cables along the way.</param>
    public void Join(
        Component? from, Terminal fromTerminal, Component? to, Terminal toTerminal, double lengthM = 0, params ReadOnlySpan<Purpose> by)
    {
        ArgumentNullException.ThrowIfNull(fromTerminal);
        ArgumentNullException.ThrowIfNull(toTerminal);
        if (fromTerminal.Medium != toTerminal.Medium)
            throw new ArgumentException("Only terminals of one medium can be joined.", nameof(toTerminal));
        if (from is not null && to is not null)
            joints.Add(new(fromTerminal.Medium, from.Name, fromTerminal.Name, to.Name, toTerminal.Name, Ids(by), lengthM));
    }

    /// <summary>One component tells another; nothing where either is missing.</summary>
    /// <param name="from">Who tells.</param>
    /// <param name="to">Who is told.</param>
    public void Tell(Component? from, Component? to) => Join(from, Terminal.Tells, to, Terminal.Told);

    /// <summary>Water through one component after another, from outlet to inlet; what is missing is left out of the line.</summary>
    /// <param name="line">Components in the direction of flow; the first needs no inlet and the last no outlet.</param>
    public void Line(params ReadOnlySpan<Component?> line)
    {
        Component? last = null;
        foreach (var next in line)
        {
            Join(last, Terminal.Outlet, next, Terminal.Inlet);
            last = next ?? last;
        }
    }

    private Component Keep(Component component)
    {
        components.Add(component);
        return component;
    }

    private IReadOnlyList<string> Ids(ReadOnlySpan<Purpose> purposes)
    {
        var ids = new List<string>();
        foreach (var purpose in purposes)
            ids.AddRange(byPurpose[purpose].Select(l => l.Part.Id));
        return [.. ids.Distinct()];
    }
}
