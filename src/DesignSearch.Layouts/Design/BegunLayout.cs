using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Design;

/// <summary>A layout half worked out: enough for the checks that need neither list nor supply.</summary>
/// <param name="Task">Scenario, layout and shelf.</param>
/// <param name="Systems">What of each system is in it.</param>
public sealed record BegunLayout(DesignTask Task, IReadOnlyList<DesignedSystem> Systems)
{
    /// <summary>The choices.</summary>
    public Layout Layout => Task.Layout;

    /// <summary>True when it is certain already that the catalogue lacks a part.</summary>
    public bool LacksParts
    {
        get
        {
            foreach (var system in Systems)
            {
                if (system.LacksParts)
                    return true;
            }

            return false;
        }
    }
}
