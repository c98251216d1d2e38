using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Compost;

/// <summary>A compost heap beside the house, with a coil whose water circulates through pipe in the house, run by a thermostat.</summary>
/// <param name="VolumeM3">Size when built [m³]; 0 without a heap.</param>
/// <param name="LossWPerK">Loss of its core to the outside air, shell and wrap included [W/K]; see <see cref="CompostHeap.LossWPerK"/>.</param>
/// <param name="DegradableKg">Biodegradable solids when built [kg].</param>
/// <param name="RatePerDay">Rate at which they rot at 20 °C [1/d].</param>
/// <param name="HeatJPerKg">Heat of each kilogram that rots [J/kg].</param>
/// <param name="CoilWPerK">From core to house air while the pump runs [W/K]; see <see cref="CompostHeap.CoilWPerK"/>; 0 without a coil.</param>
/// <param name="PumpW">Electricity of its pump [W].</param>
/// <param name="SetPointC">Middle of the thermostat's band in the house [°C].</param>
/// <param name="RestBelowC">Core below which the pump rests, so that the heap is not quenched [°C].</param>
public sealed record CompostNumbers(
    double VolumeM3,
    double LossWPerK,
    double DegradableKg,
    double RatePerDay,
    double HeatJPerKg,
    double CoilWPerK,
    double PumpW,
    double SetPointC,
    double RestBelowC) : SourceNumbers
{
    /// <summary>Days after the season's start at which it is built; 0 or less: it stands when the winter begins.</summary>
    public double BuiltDays { get; init; }

    /// <inheritdoc/>
    public override bool IsPresent => VolumeM3 > 0;

    internal override SourceKind Kind => CompostFlows.Kind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<CompostBlock<T>, T>(Kind, start, batches);

    /// <summary>The numbers as the kernel's terms.</summary>
    internal CompostTerms<double> ToTerms(SeasonAssumptions a, double stepSeconds) => new()
    {
        Store = VolumeM3 * a[CompostAssumptions.VolumetricCapacityJPerM3K] / stepSeconds,
        Loss = LossWPerK,
        Steam = VolumeM3 * a[CompostAssumptions.SteamWPerM3K],
        SteamFromC = a[CompostAssumptions.SteamFromC],
        HeatJPerKg = HeatJPerKg,
        Coil = CoilWPerK,
        PumpW = PumpW,
        SetC = SetPointC,
        RestBelowC = RestBelowC,
        PerFadeK = 1 / a[CompostAssumptions.PumpFadeK],
        AboveSetK = a[CompostAssumptions.PumpAboveSetK],
        RatePerDay = RatePerDay,
        RateFactorMost = a[CompostAssumptions.RateFactorMost],
        StartC = a[CompostAssumptions.StartC],
        DegradableKg = DegradableKg,
        BuiltDays = BuiltDays,
    };
}
