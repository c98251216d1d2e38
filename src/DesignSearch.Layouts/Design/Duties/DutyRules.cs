using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Design.Duties;

/// <summary>One rule for each state of the plant: every part bears what it meets in it.</summary>
public static class DutyRules
{
    private const string Source =
        "The catalogue's ratings, asked of every part in every state; what is met in each: docs/model.md, \"States\"";

    /// <summary>All of them, in the order of the states.</summary>
    public static IReadOnlyList<CheckRule> All { get; } =
    [
        new("bears-running", "every part while all runs in full sun", Source),
        new("bears-standing", "every part while the collector stands in full sun", Source),
        new("bears-hot-start", "every part when the pump starts on a hot collector", Source),
        new("bears-drained", "every part while the loop is drained", Source),
        new("bears-design-night", "every part in the coldest night", Source),
        new("bears-gale", "every part in a gale", Source),
        new("bears-power-cut", "every part while the current is out", Source),
        new("bears-dead-sensor", "every part when a sensor or end switch is dead", Source),
    ];
}
