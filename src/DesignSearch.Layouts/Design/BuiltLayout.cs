using DesignSearch.Climate.Plane;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Design;

/// <summary>A layout worked out: its systems, their numbers for the season model, and everything that is needed.</summary>
public sealed record BuiltLayout
{
    /// <summary>The choices.</summary>
    public required Layout Layout { get; init; }

    /// <summary>What of each system is in it, in the order of the set; the supply last.</summary>
    public required IReadOnlyList<DesignedSystem> Systems { get; init; }

    /// <summary>Its numbers for the season model.</summary>
    public required Installation Installation { get; init; }

    /// <summary>What a log of this house said against its drawing, already in the numbers; null where there is none.</summary>
    public HouseFit? Fit { get; init; }

    /// <summary>The electric supply; null when nothing needs current.</summary>
    public required SupplyPlan? Supply { get; init; }

    /// <summary>Everything that is needed.</summary>
    public required IReadOnlyList<NeededPart> Parts { get; init; }

    /// <summary>What the catalogue could not give, in plain words; such a layout fails a check.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>Where the collector looks and how it turns; null without one.</summary>
    public Mount? Mount => Systems.Select(s => s.Mount).FirstOrDefault(m => m is not null);

    /// <summary>Where the plants that are held stand; null where it is the whole house.</summary>
    public PlantPlace? Plants => Systems.Select(s => s.Plants).FirstOrDefault(p => p is not null);

    /// <summary>What to dial in: for each line of the bill what its system says of it, and nothing that is not bought.</summary>
    /// <param name="scenario">The scenario.</param>
    public IReadOnlyList<Setting> Settings(Scenario scenario)
    {
        var bought = Parts.Select(p => p.Purpose).ToHashSet();
        return [.. Systems.SelectMany(s => s.Dials(scenario)).Where(d => bought.Contains(d.On)).Select(d => d.Setting)];
    }

    /// <summary>What of one system is in it; null for nothing.</summary>
    /// <typeparam name="T">The design of that system.</typeparam>
    public T? Find<T>()
        where T : DesignedSystem => Systems.OfType<T>().FirstOrDefault();
}
