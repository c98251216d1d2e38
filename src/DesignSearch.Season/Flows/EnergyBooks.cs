using System.Text.Json.Serialization;

namespace DesignSearch.Season.Flows;

/// <summary>Every flow of heat, every use of electricity and every store of one season. Two are equal when their names and their last bits are.</summary>
public sealed class EnergyBooks : IEquatable<EnergyBooks>
{
    private readonly FlowTable table;

    // Flows, what ran back of them, uses, their cheap part, stores.
    private readonly double[] values;

    /// <summary>Books from their lines.</summary>
    /// <param name="flows">Flows of heat.</param>
    /// <param name="uses">Uses of electricity.</param>
    /// <param name="stored">Stores.</param>
    [JsonConstructor]
    public EnergyBooks(IReadOnlyList<FlowSum> flows, IReadOnlyList<UseSum> uses, IReadOnlyList<StoreSum> stored)
    {
        table = new FlowTable([.. flows.Select(f => f.Flow)], [.. uses.Select(u => u.Use)], [.. stored.Select(s => s.Store)]);
        values = [.. flows.Select(f => f.Kwh), .. flows.Select(f => f.BackKwh), .. uses.Select(u => u.Kwh), .. uses.Select(u => u.CheapKwh), .. stored.Select(s => s.Kwh)];
    }

    internal EnergyBooks(FlowTable table, double[] values) => (this.table, this.values) = (table, values);

    /// <summary>Heat: those of house and solar loop first, then source by source.</summary>
    public IReadOnlyList<FlowSum> Flows => [.. table.Flows.Select((f, i) => new FlowSum(f, values[i], values[table.Back + i]))];

    /// <summary>Electricity.</summary>
    public IReadOnlyList<UseSum> Uses => [.. table.Uses.Select((u, i) => new UseSum(u, values[table.Used + i], values[table.Cheap + i]))];

    /// <summary>Stores.</summary>
    public IReadOnlyList<StoreSum> Stored => [.. table.Stores.Select((s, i) => new StoreSum(s, values[table.Stored + i]))];

    /// <summary>All electricity [kWh].</summary>
    [JsonIgnore]
    public double ElectricKwh => Sum(table.Used, _ => true);

    /// <summary>The part of it that is bought to heat [kWh].</summary>
    [JsonIgnore]
    public double ElectricHeatKwh => Sum(table.Used, u => u.IsHeat);

    /// <summary>The part of it that pumps, fans and the like take [kWh].</summary>
    [JsonIgnore]
    public double AuxiliaryKwh => Sum(table.Used, u => !u.IsHeat);

    /// <summary>The part of it that falls into the hours of the cheap tariff [kWh].</summary>
    [JsonIgnore]
    public double CheapKwh => Sum(table.Cheap, _ => true);

    /// <summary>All heat that came in: from outside, with what ran back hour by hour where a flow counts that, and what stores gave [kWh].</summary>
    public double ThroughputKwh
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < table.Flows.Length; i++)
                sum += (table.IsOutside(table.Flows[i].From) ? values[i] : 0) + values[table.Back + i];
            for (var i = 0; i < table.Stores.Length; i++)
                sum += Math.Max(0, -values[table.Stored + i]);
            return sum;
        }
    }

    /// <summary>Heat that is unaccounted for, as a share of <see cref="ThroughputKwh"/>: what came in less what went out less what is stored.</summary>
    public double Residual
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < table.Flows.Length; i++)
                sum += (table.IsOutside(table.Flows[i].From) ? values[i] : 0) - (table.IsOutside(table.Flows[i].To) ? values[i] : 0);
            for (var i = 0; i < table.Stores.Length; i++)
                sum -= values[table.Stored + i];
            return ThroughputKwh is > 0 and var throughput ? Math.Abs(sum) / throughput : 0;
        }
    }

    /// <summary>Whether an account lies outside the plant.</summary>
    /// <param name="account">An account that a flow leaves or enters.</param>
    public bool IsOutside(string account) => table.IsOutside(account);

    /// <summary>Heat of one flow [kWh]; 0 where there is no such flow.</summary>
    /// <param name="flow">The flow.</param>
    public double Of(Flow flow) => At(0, Array.FindIndex(table.Flows, f => f.Id == flow.Id));

    /// <summary>Electricity of one use [kWh]; 0 where there is no such use.</summary>
    /// <param name="use">The use.</param>
    public double Of(Use use) => At(table.Used, Array.FindIndex(table.Uses, u => u.Id == use.Id));

    /// <summary>Heat kept by one store, end less start [kWh]; 0 where there is no such store.</summary>
    /// <param name="store">The store.</param>
    public double Of(Store store) => At(table.Stored, Array.FindIndex(table.Stores, s => s.Id == store.Id));

    /// <inheritdoc/>
    public bool Equals(EnergyBooks? other) => other is not null && table.Equals(other.table) && values.AsSpan().SequenceEqual(other.values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as EnergyBooks);

    /// <inheritdoc/>
    public override int GetHashCode() => values.Aggregate(17, HashCode.Combine);

    private double At(int first, int index) => index < 0 ? 0 : values[first + index];

    private double Sum(int first, Func<Use, bool> counts)
    {
        var sum = 0.0;
        for (var i = 0; i < table.Uses.Length; i++)
            sum += counts(table.Uses[i]) ? values[first + i] : 0;
        return sum;
    }
}
