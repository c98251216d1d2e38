using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Benches;

/// <summary>A bench as store and conductances; names and equations in docs/model.md, "Bench under fleece". Without one everything is 0 but the store.</summary>
internal readonly record struct BenchCoefficients()
{
    /// <summary>1 with a bench, 0 without.</summary>
    public double Is { get; init; }

    /// <summary>[J/K]</summary>
    public double Store { get; init; } = 1;

    /// <summary>[W/K]</summary>
    public double ToAir { get; init; }

    /// <summary>[W/K]</summary>
    public double ToCover { get; init; }

    /// <summary>[W]</summary>
    public double PowerW { get; init; }

    /// <summary>[°C]</summary>
    public double SetPointC { get; init; }

    public static BenchCoefficients From(Installation installation, SeasonAssumptions a)
    {
        var bench = installation.Bench;
        if (bench.AreaM2 <= 0)
            return new();
        var loss = bench.FleeceWPerM2K * bench.AreaM2;
        return new()
        {
            Is = 1,
            Store = a.BenchCapacityJPerM2K * bench.AreaM2,
            ToAir = (1 - a.BenchRadiantShare) * loss,
            ToCover = a.BenchRadiantShare * loss,
            PowerW = bench.PowerW,
            SetPointC = bench.SetPointC,
        };
    }
}
