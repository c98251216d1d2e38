using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.Sources;

/// <summary>What a source's block is made from.</summary>
/// <param name="cases">The layouts of the run; lanes beyond the last carry the last one again.</param>
/// <param name="houses">Their houses, one a lane.</param>
/// <param name="forcing">The winter.</param>
/// <param name="stepSeconds">Length of a step [s].</param>
internal readonly ref struct SourceStart(ReadOnlySpan<LayoutCase> cases, ReadOnlySpan<HouseTerms<double>> houses, WinterForcing forcing, double stepSeconds)
{
    private readonly ReadOnlySpan<LayoutCase> cases = cases;
    private readonly ReadOnlySpan<HouseTerms<double>> houses = houses;

    public WinterForcing Forcing => forcing;

    public double StepSeconds => stepSeconds;

    /// <summary>Outside air of the winter's first hour, where everything but the ground begins [°C].</summary>
    public double FirstAirC => forcing.Winter.AirC[0];

    public HouseTerms<double> House(int lane) => houses[lane];

    /// <summary>This kind's numbers in a lane; null where the layout has none.</summary>
    public TNumbers? Find<TNumbers>(int lane)
        where TNumbers : SourceNumbers => cases[Math.Min(lane, cases.Length - 1)].Installation.Find<TNumbers>();
}
