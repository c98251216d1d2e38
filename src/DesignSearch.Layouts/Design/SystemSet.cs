using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Layouts.Design;

/// <summary>The systems there are, in order, and what they bring together.</summary>
public sealed class SystemSet
{
    /// <summary>Makes a set.</summary>
    /// <param name="all">The systems in the order of choices, lists and words; one of them may supply the others with current.</param>
    public SystemSet(IEnumerable<PlantSystem> all)
    {
        All = [.. all];
        Supplier = All.OfType<ISupplier>().SingleOrDefault();
        Choices = new(All.SelectMany(s => s.Choices), All.Select<PlantSystem, Func<IChoices, bool>>(s => s.NeedsLowVoltage));
        Kinds = [.. All.SelectMany(s => s.Kinds).Append(SmallPart.Definition).Distinct()];
        Assumptions = [.. SeasonAssumptions.Catalogue.Concat(All.SelectMany(s => s.Assumptions)).Distinct()];
        Rules = [.. PlantRules.All.Concat(All.SelectMany(s => s.Rules))];
        RulePlaces = Rules.Select((r, i) => (r.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
    }

    /// <summary>The systems.</summary>
    public IReadOnlyList<PlantSystem> All { get; }

    /// <summary>The one that brings current; null without.</summary>
    public ISupplier? Supplier { get; }

    /// <summary>All choices.</summary>
    public ChoiceSet Choices { get; }

    /// <summary>All kinds of parts.</summary>
    public IReadOnlyList<PartKind> Kinds { get; }

    /// <summary>All assumptions, the house's first.</summary>
    public IReadOnlyList<AssumptionEntry> Assumptions { get; }

    /// <summary>All rules, those of the whole plant first; the order in which a search counts violations.</summary>
    public IReadOnlyList<CheckRule> Rules { get; }

    private Dictionary<string, int> RulePlaces { get; }

    /// <summary>Place of a rule in <see cref="Rules"/>.</summary>
    /// <param name="id">Name of the rule.</param>
    /// <exception cref="KeyNotFoundException">There is no such rule.</exception>
    public int PlaceOf(string id) => RulePlaces[id];
}
