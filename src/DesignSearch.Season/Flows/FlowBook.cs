using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Flows;

/// <summary>Takes one hour of one batch into the sums of the season. Whoever books does so in the order in which its flows and uses are declared.</summary>
/// <param name="table">What is summed.</param>
/// <param name="sums">The batch's sums, <see cref="FlowTable.Count"/> of them, in watts times steps.</param>
/// <param name="isCheap">True in an hour of the cheap tariff.</param>
/// <param name="flow">First flow of the one that books.</param>
/// <param name="use">First use of the one that books.</param>
internal ref struct FlowBook<T>(FlowTable table, Span<T> sums, bool isCheap, int flow, int use)
    where T : unmanaged, ILane<T>
{
    private readonly Flow[] flows = table.Flows;
    private readonly Use[] uses = table.Uses;
    private readonly Span<T> heat = sums[..table.Used], used = sums[table.Used..table.Cheap], cheap = sums[table.Cheap..table.Stored];
    private int flow = flow, use = use;

    /// <summary>Books heat.</summary>
    /// <param name="what">The next flow declared.</param>
    /// <param name="watts">Its sum over the steps of this hour [W].</param>
    /// <exception cref="InvalidOperationException">Another flow is the next.</exception>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Heat(Flow what, T watts)
    {
        var i = flow++;
        if (!ReferenceEquals(flows[i], what))
            throw OutOfOrder(what.Id, flows[i].Id);
        heat[i] += watts;
    }

    /// <summary>Books heat of a flow whose way back counts as heat that came in.</summary>
    /// <inheritdoc cref="Heat"/>
    public void HeatBothWays(Flow what, T watts)
    {
        heat[flows.Length + flow] += T.Max(T.Of(0) - watts, T.Of(0));
        Heat(what, watts);
    }

    /// <summary>Books electricity.</summary>
    /// <param name="what">The next use declared.</param>
    /// <param name="watts">Its sum over the steps of this hour [W].</param>
    /// <exception cref="InvalidOperationException">Another use is the next.</exception>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Electricity(Use what, T watts)
    {
        var i = use++;
        if (!ReferenceEquals(uses[i], what))
            throw OutOfOrder(what.Id, uses[i].Id);
        used[i] += watts;
        if (isCheap)
            cheap[i] += watts;
    }

    private static InvalidOperationException OutOfOrder(string booked, string due) => new($"{booked} was booked where {due} is declared.");
}
