using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.House;

/// <summary>A node's way to something outside the house's block: source − conductance × (the node at the end of the step) comes in [W].</summary>
internal struct Door<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>What hangs on the node's temperature [W/K].</summary>
    public T Conductance;

    /// <summary>What does not [W].</summary>
    public T Source;

    /// <summary>Opens it further.</summary>
    /// <param name="conductance">What hangs on the node's temperature [W/K], 0 or more.</param>
    /// <param name="source">What does not [W].</param>
    public void Add(T conductance, T source)
    {
        Conductance += conductance;
        Source += source;
    }
}
