using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Heaters;
using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>
/// Plants of which no layout of a set is better than all: the skin at its best, the strongest heater on its highest set point, and loops as
/// <see cref="BestLoop"/> makes them.
/// </summary>
/// <param name="assessor">Scenario and winters.</param>
/// <param name="space">Points to layouts.</param>
internal sealed class BestPlant(LayoutAssessor assessor, LayoutSpace space)
{
    private readonly ChoiceSet choices = assessor.Scenario.Systems.Choices;
    private readonly BestSkin skins = new(assessor.Scenario);
    private readonly OpenStores stores = new(assessor, space);
    private readonly BestLoop loops = new(assessor, space);
    private readonly BestPlane planes = new(assessor, space);

    /// <summary>The plants.</summary>
    /// <param name="set">A set that can be simulated.</param>
    public Optimum Of(LevelSets set)
    {
        var built = LayoutBuilder.Build(assessor.Scenario, space.At(Strongest(set)));
        // What a heater radiates is less to the air: of open ones the least.
        var plant = built.Installation with
        {
            House = skins.Of([.. SkinChoices.All.Select(c => set[choices.IndexOf(c)].ToArray())]),
            Heater = built.Installation.Heater with { RadiantShare = Heaters(set).Select(h => h.RadiantShare).DefaultIfEmpty(0).Min() },
        };
        var (plants, isOpen) = (stores.Of(set, plant), stores.IsOpen(set));
        if (built.Find<DesignedSolar>() is null)
            return new(plants, _ => null, isOpen);
        var (open, isWide) = loops.Of(set);
        return new([.. plants.SelectMany(p => open.Select(l => l.On(p)))], planes.Of(set), isWide || isOpen);
    }

    private IEnumerable<Heater> Heaters(LevelSets set) =>
        set[choices.IndexOf(HeaterChoices.Heater)].ToArray().Select(l => assessor.Scenario.LevelsOf(HeaterChoices.Heater)[l].Part).OfType<Heater>();

    private double[] Strongest(LevelSets set)
    {
        var point = set.Lowest();
        void Most(Choice choice, Func<ChoiceValue, double> by)
        {
            var (levels, at) = (assessor.Scenario.LevelsOf(choice), choices.IndexOf(choice));
            point[at] = set[at].ToArray().MaxBy(l => by(levels[l]));
        }

        Most(HeaterChoices.Heater, v => (v.Part as Heater)?.Watts ?? 0);
        Most(HeaterChoices.SetC, v => v.Number);
        return point;
    }
}
