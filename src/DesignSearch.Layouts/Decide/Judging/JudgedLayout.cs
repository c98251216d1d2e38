using System.Globalization;
using System.Text.Json.Serialization;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>One layout with everything a person needs to weigh it, buy it and set it up.</summary>
public sealed record JudgedLayout
{
    /// <summary>Place in the ranking, from 1; 0 for the bare house.</summary>
    public required int Rank { get; init; }

    /// <summary>Short name for files beside the rank: lower-case letters, digits and hyphens; no two layouts are told apart by it.</summary>
    public required string Slug { get; init; }

    /// <summary>The layout in a few plain words.</summary>
    public required string Title { get; init; }

    /// <summary>What tells it from the first of the ranking with the same title, in words; empty where its title stands alone.</summary>
    public string Apart { get; init; } = "";

    /// <summary>Title and what tells it apart.</summary>
    [JsonIgnore]
    public string FullTitle => TitleWords.Full(Title, Apart);

    /// <summary>How its collector turns: "none", "fixed", "two-position", "stepped" or "continuous".</summary>
    public required string Turning { get; init; }

    /// <summary>Key of each choice that is awake and its value, in the order of the scenario's [choices].</summary>
    public required IReadOnlyDictionary<string, string> Choices { get; init; }

    /// <summary>True when no design winter has a frost hour and every check passes.</summary>
    public required bool Holds { get; init; }

    /// <summary>True when every check passes.</summary>
    public required bool PassesChecks { get; init; }

    /// <summary>What is bought, to the cent.</summary>
    public required decimal BuildPrice { get; init; }

    /// <summary>Build price plus the present value of running cost and replacements, and own work where the builder gave a rate.</summary>
    public required decimal LifeCost { get; init; }

    /// <summary>Running cost.</summary>
    public required RunningCost Running { get; init; }

    /// <summary>Hours of own work to build it.</summary>
    public required double LabourHours { get; init; }

    /// <summary>What these hours are counted at in <see cref="LifeCost"/>; 0 where the builder gave no rate.</summary>
    public decimal LabourCost { get; init; }

    /// <summary>Frost-free hours gained over the bare house per unit of life cost.</summary>
    public required double Score { get; init; }

    /// <summary>Frost hours, weighted over the winters.</summary>
    public required double FrostHours { get; init; }

    /// <summary>Frost hours of the worst winter.</summary>
    public required int WorstFrostHours { get; init; }

    /// <summary>Frost degree-hours, weighted over the winters [K·h].</summary>
    public required double FrostDegreeHoursKh { get; init; }

    /// <summary>Lowest hour mean of the plants' air over all winters [°C]: where they stand.</summary>
    public required double LowestAirC { get; init; }

    /// <summary>Lowest hour mean of the house's own air over all winters [°C].</summary>
    [JsonIgnore]
    public double LowestHouseAirC => Winters.Min(w => w.Outcome.LowestHouseAirC);

    /// <summary>How sure it is; null where that was not asked.</summary>
    public Chance? Chance { get; init; }

    /// <summary>Where the plants that are held stand; null where it is the whole house.</summary>
    public PlantPlace? Plants { get; init; }

    /// <summary>Electric heat of the systems that are bought to heat, weighted over the winters [kWh].</summary>
    public required double StandbyKwh { get; init; }

    /// <summary>Heat from the collector into the tank, weighted over the winters [kWh].</summary>
    public required double CollectorYieldKwh { get; init; }

    /// <summary>Hours of the collector's pump, weighted over the winters.</summary>
    public required double PumpHours { get; init; }

    /// <summary>Collector area [m²], gross.</summary>
    public required double CollectorAreaM2 { get; init; }

    /// <summary>How much more sun would fall on the collector by another model of the sky (Hay and Davies instead of Perez), as a share; null without a collector.</summary>
    public double? OtherSkyShare { get; init; }

    /// <summary>What each winter did.</summary>
    public required IReadOnlyList<WinterOutcome> Winters { get; init; }

    /// <summary>Every check with its margin, the tightest first.</summary>
    public required IReadOnlyList<Check> Checks { get; init; }

    /// <summary>The shopping list; its total is the build price.</summary>
    public required IReadOnlyList<BillLine> Bill { get; init; }

    /// <summary>The wiring table: advice only, a licensed person decides. Empty where nothing needs current.</summary>
    public IReadOnlyList<Wire> Wires { get; init; } = [];

    /// <summary>The plant drawn from its bill; empty in a run that was stored before there were drawings.</summary>
    public Scheme Scheme { get; init; } = Scheme.Empty;

    /// <summary>Sizes of house and plant; null in a run that was stored before there were plans.</summary>
    public SitePlan? Site { get; init; }

    /// <summary>The frame of the collectors; null without any.</summary>
    public StandPlan? Frame { get; init; }

    /// <summary>What to dial in.</summary>
    public required IReadOnlyList<Setting> Settings { get; init; }

    /// <summary>What is dangerous about it.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Those of them that its own cold makes true: it is no layout to leave to itself.</summary>
    [JsonIgnore]
    public IEnumerable<Caution> ComeTrue => Cautions.Where(c => LowestHouseAirC < c.ComesTrueBelowC);

    /// <summary>What it asks for year by year.</summary>
    public IReadOnlyList<Upkeep> Upkeep { get; init; } = [];

    /// <summary>What to try, to ask and to write down; empty in a run that was stored before there were papers.</summary>
    public PlantPapers Papers { get; init; } = PlantPapers.Empty;

    /// <summary>What an hour of a licensed person is counted at in it.</summary>
    public decimal LicensedPerHour { get; init; }

    /// <summary>What is bought or hired again within the years of use, the dearest in a year first.</summary>
    public IReadOnlyList<Wear> Wears { get; init; } = [];

    /// <summary>The layout again.</summary>
    /// <param name="scenario">The scenario that it was judged in.</param>
    /// <exception cref="FormatException">A choice does not hold what the scenario's choices may.</exception>
    public Layout ToLayout(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ChoiceValue Value(Choice choice) =>
            !Choices.TryGetValue(choice.Key, out var text) || text == ChoiceValue.NoneWord ? choice.AtRest
            : text == ChoiceValue.Cheapest.Id ? ChoiceValue.Cheapest
            : choice is NumberChoice ? ChoiceValue.Of(double.Parse(text, CultureInfo.InvariantCulture))
            : scenario.Catalogue.TryFind<IPart>(text, out var part) ? ChoiceValue.Of(part)
            : throw new FormatException(TitleWords.NoSuchPart(text));
        return Layout.Of([.. scenario.Systems.Choices.All.Select(Value)], scenario.Systems.Choices);
    }
}
