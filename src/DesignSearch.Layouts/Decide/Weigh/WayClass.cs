using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>A way to protect the house: which levels of which choices are of it.</summary>
/// <param name="Key">A name of its own.</param>
/// <param name="Keeps">Whether a level of a choice is of the way.</param>
public sealed record WayClass(string Key, Func<Choice, ChoiceValue, bool> Keeps)
{
    /// <summary>Every way of turning that there is.</summary>
    internal static IReadOnlyList<TurningKind> Turnings { get; } = [TurningKind.Fixed, TurningKind.TwoPosition, TurningKind.Stepped, TurningKind.Continuous];

    /// <summary>Whether a layout is of the way.</summary>
    /// <param name="layout">A layout.</param>
    public bool Holds(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return layout.Set.All.All(c => Keeps(c, layout.ValueOf(c)));
    }

    /// <summary>A part that may be left out, with or without.</summary>
    internal static WayClass Part(PartChoice choice, bool has) => new((has ? WayWords.With : WayWords.Without) + " " + choice.Key, (c, l) => c != choice || l.IsNone == !has);

    /// <summary>No collector.</summary>
    internal static WayClass NoCollector { get; } = new(WayWords.NoCollector, (c, l) => c != SolarChoices.Collector || l.IsNone);

    /// <summary>A collector on a mount of a kind.</summary>
    internal static WayClass Mount(TurningKind kind) => new(
        WayWords.Mount(kind), (c, l) => c == SolarChoices.Collector ? !l.IsNone : c != SolarChoices.Mount || (l.Part is CollectorMount m && m.Turning == kind));

    /// <summary>A heater and nothing else.</summary>
    internal static WayClass HeaterAlone { get; } =
        new(WayWords.Alone, (c, l) => c is not PartChoice { IsRoot: true } || l.IsNone == (c != HeaterChoices.Heater));

    /// <summary>All ways of a scenario of which something is offered.</summary>
    /// <param name="scenario">The scenario.</param>
    public static IReadOnlyList<WayClass> All(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var parts = scenario.Systems.Choices.All.OfType<PartChoice>().Where(c => c.MayBeNone && c.IsRoot && c != SolarChoices.Collector);
        IEnumerable<WayClass> ways = [.. parts.SelectMany(c => new[] { Part(c, true), Part(c, false) }), NoCollector, .. Turnings.Select(Mount), HeaterAlone];
        return [.. ways.Where(w => scenario.Choices.All(c => c.Levels.Any(l => w.Keeps(c.Choice, l))))];
    }
}
