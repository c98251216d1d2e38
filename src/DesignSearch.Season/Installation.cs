using DesignSearch.Season.Barrels;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season;

/// <summary>Every number the season model needs to know of one layout, SI. A component that is absent has no area, no mass or no power.</summary>
/// <param name="House">The greenhouse itself.</param>
/// <param name="Barrels">Water barrels standing in it.</param>
/// <param name="Tank">The tank.</param>
/// <param name="Collector">The collector with its pump and its control.</param>
/// <param name="PipeRun">The pipe between collector and tank, out and back.</param>
/// <param name="Release">What brings the tank's heat into the house.</param>
/// <param name="Heater">The stand-by heater.</param>
public sealed record Installation(
    HouseNumbers House,
    BarrelNumbers Barrels,
    TankNumbers Tank,
    CollectorNumbers Collector,
    PipeRunNumbers PipeRun,
    ReleaseNumbers Release,
    HeaterNumbers Heater)
{
    /// <summary>A house with nothing in it.</summary>
    /// <param name="house">The house.</param>
    public static Installation Of(HouseNumbers house) =>
        new(house, BarrelNumbers.None, TankNumbers.None, CollectorNumbers.None, PipeRunNumbers.None, ReleaseNumbers.None, HeaterNumbers.None);

    /// <summary>Every other source, one of a kind at most, always in the same order whoever lists them; none by default. One of no size is left out.</summary>
    /// <exception cref="ArgumentException">Two are of one kind.</exception>
    public IReadOnlyList<SourceNumbers> Sources
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            var sorted = value.Where(s => s.IsPresent).OrderBy(s => s.Kind).ToArray();
            if (sorted.DistinctBy(s => s.Kind).Count() < sorted.Length)
                throw new ArgumentException("A layout has one source of a kind at most.", nameof(value));
            field = new ValueList<SourceNumbers>(sorted);
        }
    }
        = ValueList<SourceNumbers>.Empty;

    /// <summary>True when the plants stand in one of the sources, under a fleece say, and not in the house's air.</summary>
    public bool PlantsStandApart => Sources.Any(s => s.Kind.HoldsPlants);

    /// <summary>The layout with a source added, or put in the place of its like; one of no size takes that away.</summary>
    /// <param name="source">The source.</param>
    public Installation With(SourceNumbers source) => this with { Sources = [.. Sources.Where(s => s.Kind != source.Kind), source] };

    /// <summary>The source of a kind; null where the layout has none.</summary>
    /// <typeparam name="TNumbers">The kind.</typeparam>
    public TNumbers? Find<TNumbers>()
        where TNumbers : SourceNumbers
    {
        for (var i = 0; i < Sources.Count; i++)
        {
            if (Sources[i] is TNumbers found)
                return found;
        }

        return null;
    }
}
