using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>Rules of a compost heap.</summary>
public static class CompostRules
{
    /// <summary>Pipe and pump against a hot heap.</summary>
    public static CheckRule Heat { get; } =
        new("compost-heat", "pipe and pump bear a hot heap", "Common practice, no source: hot heaps reach 60 to 70 °C");

    /// <summary>Frost in the pipes between heap and house while nothing moves in them.</summary>
    public static CheckRule Frost { get; } = new(
        "compost-frost",
        "outdoor pipes of the heap on the coldest night",
        "Freezing of propylene glycol: Melinder 2010; radiation to a clear sky: utility advice on solar freezing");

    /// <summary>An open header tank must stand above all water.</summary>
    public static CheckRule Header { get; } = new(
        "compost-header",
        "header tank above the heap's highest pipe",
        "Water stands level in open vessels; height 0.6 of the width: common practice, no source");

    /// <summary>A wrap that burns.</summary>
    public static CheckRule Fire { get; } = new(
        "compost-fire", "a heap that can burn, clear of the house", "Own choice, 5 m; the local code or the insurer may want more");

    /// <summary>Nothing else in reserve.</summary>
    public static CheckRule Alone { get; } = new(
        "compost-alone",
        "a compost heap as the only heat",
        "Told, not refused; heaps that were measured differ by more than a factor of two: common practice, no source");

    /// <summary>All of them, in the order in which a search counts them.</summary>
    public static IReadOnlyList<CheckRule> All { get; } = [Heat, Frost, Header, Fire, Alone];
}
