using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>Makes rows of the wiring table into strips: what each is about, and the contacts that the scheme puts in its line.</summary>
internal sealed class WiringStrips
{
    private const int LeftLetters = 38;
    private const int RightLetters = 40;

    private readonly Scheme scheme;
    private readonly IReadOnlyList<Wire> wires;
    private readonly Dictionary<string, Component> components;
    private readonly Dictionary<Purpose, Component> byPurpose;

    public WiringStrips(JudgedLayout layout)
    {
        (scheme, wires) = (layout.Scheme, layout.Wires);
        components = scheme.Components.DistinctBy(c => c.Name).ToDictionary(c => c.Name, StringComparer.Ordinal);
        byPurpose = scheme.Components.Where(c => c.Purpose is not null).DistinctBy(c => c.Purpose)
            .ToDictionary(c => c.Purpose!, c => c);
    }

    /// <summary>Panels and battery end at their controller, each on clamps of its own and never on one rail, before any box.</summary>
    public static bool IsSource(Wire wire) => wire.EndsAtDevice && wire.Volts > 0;

    /// <summary>The strip of a row.</summary>
    public WiringStrip Of(Wire wire)
    {
        var component = About(wire);
        var tellers = Tellers(component);
        var stops = tellers.FirstOrDefault(t => t.Symbol == Symbol.LimitSwitch && component?.Symbol == Symbol.Motor);
        var hasStops = stops is not null && wires.Any(w => w.EndsAtDevice && About(w) == stops);
        // End switches of a motor cut it, or the coils of its interlock where they are wired there.
        List<Component> contacts = [.. tellers.Where(t => t != stops)];
        if (component?.Symbol == Symbol.Relay)
            contacts.AddRange(StopsOf(component));
        var isCoil = component?.Symbol == Symbol.Relay && contacts.Count > 1;
        var left = PictureWords.Switches(PictureWords.Fuse(wire), [.. contacts.Select(c => (c.Name, TerminalsOf(c)))], isCoil);
        if (component?.Symbol == Symbol.Motor && contacts.Count > 0)
            left += PictureWords.ChangesOver;
        return new(
            wire,
            component,
            isCoil ? [] : contacts,
            isCoil ? contacts : [],
            hasStops,
            left.Length > 0 ? Sheet.Wrapped(left, LeftLetters) : [],
            wire.Ends.Count > 0 ? Sheet.Wrapped(PictureWords.Cable(wire), RightLetters) : [],
            SchemeSheet.NameLines(wire.IsFeeder ? PictureWords.FeederFrom(wire) : PictureWords.DeviceName(wire, component)));
    }

    private IEnumerable<Component> StopsOf(Component relay) => scheme.Joints
        .Where(j => j.Medium == Medium.Signal && j.From == relay.Name)
        .SelectMany(j => Tellers(components[j.To]))
        .Where(t => t.Symbol == Symbol.LimitSwitch && !wires.Any(w => w.EndsAtDevice && About(w) == t))
        .Distinct();

    private string TerminalsOf(Component teller)
    {
        var ends = wires.FirstOrDefault(w => w.Purpose is not null && w.Purpose == teller.Purpose)?.Ends ?? [];
        return string.Join(", ", ends.Where(e => e.Terminal.Length > 0 && PictureWords.IsContact(e.Carries)).Select(e => e.Terminal));
    }

    private Component? About(Wire wire) => wire.Purpose is { } purpose
        ? byPurpose.GetValueOrDefault(purpose)
        : components.GetValueOrDefault(wire.Device);

    // A sensor tells a temperature and switches nothing.
    private IReadOnlyList<Component> Tellers(Component? component) => component is null
        ? []
        :
        [
            .. scheme.Joints.Where(j => j.Medium == Medium.Signal && j.To == component.Name).Select(j => components[j.From]).Distinct()
                .Where(t => t.Symbol is not (Symbol.Sensor or Symbol.Tank or Symbol.Plain)),
        ];
}
