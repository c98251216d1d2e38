using DesignSearch.Climate;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Everything a builder says before a search: place, house, climate, money, what may be chosen.</summary>
public sealed record Scenario
{
    /// <summary>Name of the run, for display.</summary>
    public required string Name { get; init; }

    /// <summary>The builder's own words; says so where the scenario is invented.</summary>
    public required string Description { get; init; }

    /// <summary>Where it stands.</summary>
    public required Place Place { get; init; }

    /// <summary>Distances and space on the site.</summary>
    public required SiteLimits Site { get; init; }

    /// <summary>The greenhouse.</summary>
    public required Greenhouse Greenhouse { get; init; }

    /// <summary>The weather, from a file or from monthly means.</summary>
    public required ClimateSource Climate { get; init; }

    /// <summary>The dates that count.</summary>
    public required SeasonDates Season { get; init; }

    /// <summary>What is in doubt about what is given, in plain sentences: the weather's own doubts, means that cannot be true there, a season that leaves
    /// out the winter, thermostats that do not go with the limit.</summary>
    public IEnumerable<string> Doubts =>
    [
        .. Climate.Record?.Doubts ?? [], .. PlaceDoubts.Of(this), .. !PlaceDoubts.IsTurned(this) && SeasonDoubt.Of(this) is { } season ? new[] { season } : [],
        .. ThermostatDoubts.Of(this), .. ShapeDoubt.Of(this),
    ];

    /// <summary>The winters every layout is judged on; weights add to 1.</summary>
    public required IReadOnlyList<WinterWish> Winters { get; init; }

    /// <summary>Budget, tariff, years.</summary>
    public required MoneyTerms Money { get; init; }

    /// <summary>The parts that can be bought.</summary>
    public required Catalogue Catalogue { get; init; }

    /// <summary>The parts that are of use there: without mains, none that needs them.</summary>
    public Catalogue Offered => Site.HasNoMains ? Catalogue.OffMains : Catalogue;

    /// <summary>What the builder owns already.</summary>
    public required Stock Stock { get; init; }

    /// <summary>The systems that can be built.</summary>
    public required SystemSet Systems { get; init; }

    /// <summary>What may be chosen, one entry a choice, in the order of the systems' choices.</summary>
    public required IReadOnlyList<VariedChoice> Choices { get; init; }

    /// <summary>The model's assumptions.</summary>
    public required SeasonAssumptions Assumptions { get; init; }

    /// <summary>Keys of the assumptions the scenario set itself.</summary>
    public required IReadOnlySet<string> AssumptionsSet { get; init; }

    /// <summary>What parts the cells of the tables that are written.</summary>
    public CellSeparator Separator { get; init; }

    /// <summary>How long to search.</summary>
    public required SearchWish Search { get; init; }

    /// <summary>Every file that was read, as the scenario names it and where it lies.</summary>
    public required IReadOnlyList<(string Name, string Path)> Files { get; init; }

    /// <summary>What may be chosen for one choice.</summary>
    /// <param name="choice">A choice of the systems.</param>
    public IReadOnlyList<ChoiceValue> LevelsOf(Choice choice) => Choices[Systems.Choices.IndexOf(choice)].Levels;
}
