using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Benches;

/// <summary>A bench under fleece, heated or not, on which the plants stand: its air is then the plants' air, and frost is counted there.</summary>
/// <param name="AreaM2">Area [m²]; 0 without one.</param>
/// <param name="FleeceWPerM2K">Heat that fleece, sides and board let out, over the bench's area [W/(m²K)], above 0.</param>
/// <param name="PowerW">Electric heat under the fleece [W], 0 or more.</param>
/// <param name="SetPointC">Middle of its thermostat's band [°C].</param>
public sealed record BenchNumbers(double AreaM2, double FleeceWPerM2K, double PowerW, double SetPointC) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => AreaM2 > 0;

    internal override SourceKind Kind => BenchFlows.Kind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<BenchBlock<T>, T>(Kind, start, batches);

    /// <summary>The numbers as the kernel's terms.</summary>
    internal BenchTerms<double> ToTerms(SeasonAssumptions a, double stepSeconds, double startC)
    {
        var loss = FleeceWPerM2K * AreaM2;
        return new()
        {
            IsPresent = 1,
            Store = a[BenchAssumptions.CapacityJPerM2K] * AreaM2 * (1 / stepSeconds),
            ToAir = (1 - a[BenchAssumptions.RadiantShare]) * loss,
            ToCover = a[BenchAssumptions.RadiantShare] * loss,
            OpenFactor = Math.Max(1, a[BenchAssumptions.OpenWPerM2K] / FleeceWPerM2K),
            OpenAboveC = a[BenchAssumptions.OpenAboveC],
            PowerW = PowerW,
            SetC = SetPointC,
            StartC = startC,
        };
    }
}
