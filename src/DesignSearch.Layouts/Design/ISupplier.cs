using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Design;

/// <summary>The system that brings current to all others; it is designed last.</summary>
public interface ISupplier
{
    /// <summary>Brings current to the devices of a layout.</summary>
    /// <param name="task">Scenario, layout and shelf.</param>
    /// <param name="circuits">All devices, one or more.</param>
    /// <param name="needs">The list of the layout so far; what the supply needs is added to it.</param>
    /// <returns>The supply.</returns>
    SuppliedSystem Supply(DesignTask task, IReadOnlyList<Circuit> circuits, Needs needs);
}
