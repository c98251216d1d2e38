using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Solar;
using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>
/// The least that layouts of a set cost without electricity: for each part that is certain to be added, the parts chosen with it at their
/// cheapest, the least that always comes with them, and the least supply of current for all of them. "The least that comes with them" is found
/// by descent; tests on random layouts hold that nothing is cheaper.
/// </summary>
internal sealed class PriceFloor
{
    // Of what is found by descent, so much is taken off; cents and tenths of an hour, as they are rounded.
    private const double Doubted = 0.01;
    private const double Cents = 0.1;
    private const double LabourTenth = 0.11;
    private const int Contexts = 6;

    private readonly LayoutAssessor assessor;
    private readonly OwnCosts own;
    private readonly IReadOnlyList<PartGroup> groups;
    private readonly bool[] drawsCurrent;
    private readonly int mount;
    private readonly int[] supply;

    // What each level of a choice costs by itself, as much of it as is always listed; of a root, for one piece where pieces are counted.
    private readonly Costs[][] parts;
    private readonly Dictionary<string, Costs> rests = new(StringComparer.Ordinal);

    public PriceFloor(LayoutAssessor assessor)
    {
        this.assessor = assessor;
        own = new(assessor);
        groups = PartGroup.All(assessor.Scenario);
        var choices = assessor.Scenario.Systems.Choices;
        mount = choices.IndexOf(SolarChoices.Mount);
        supply = [.. Enumerable.Range(0, choices.All.Count).Where(i => choices.All[i].Under is null && choices.All[i] is not PartChoice { IsRoot: true })];
        parts = [.. choices.All.Select((_, i) => new Costs[Levels(i).Count])];
        drawsCurrent = [.. groups.Select(Learn)];
    }

    private double Slack => Cents + (LabourTenth * (double)assessor.Scenario.Money.LabourRatePerHour);

    /// <summary>The least of build price and of cost without electricity.</summary>
    /// <param name="set">Layouts.</param>
    public Costs Of(LevelSets set)
    {
        var (sum, wired) = (new Costs(-Slack, -Slack), new List<PartGroup>());
        for (var g = 0; g < groups.Count; g++)
        {
            var group = groups[g];
            if (MayBeNone(set, group))
                continue;
            sum += Chosen(set, group);
            if (drawsCurrent[g])
                wired.Add(group);
            else
                sum += (1 - Doubted) * Rest(set, [group]);
        }

        return wired.Count == 0 ? sum : sum + ((1 - Doubted) * Rest(set, wired));
    }

    private IReadOnlyList<ChoiceValue> Levels(int choice) => assessor.Scenario.Choices[choice].Levels;

    private bool MayBeNone(LevelSets set, PartGroup group)
    {
        foreach (var level in set[group.Root])
        {
            if (Levels(group.Root)[level].IsNone)
                return true;
        }

        return false;
    }

    // The parts chosen, at their cheapest.
    private Costs Chosen(LevelSets set, PartGroup group)
    {
        var count = group.Count < 0 ? 1 : set[group.Count].ToArray().Min(l => Levels(group.Count)[l].Number);
        var least = count * Least(set[group.Root], parts[group.Root]);
        foreach (var i in group.Under.Where(IsCounted))
            least += Least(set[i], parts[i]);
        return least;
    }

    private static Costs Least(ReadOnlySpan<int> levels, Costs[] of)
    {
        var least = Costs.Endless;
        foreach (var level in levels)
            least = Costs.Least(least, of[level]);
        return least;
    }

    // A choice that may sleep, and what changes with others what else must be bought, is left to what comes with the rest.
    private bool IsCounted(int choice) => assessor.Scenario.Choices[choice].Choice is PartChoice { Also: null } part
        && part != SolarChoices.LoopPump && part != SolarChoices.Pipe && part != SolarChoices.Protection;

    // The mounts left, told apart only by whether they turn: that is what much else hangs on.
    private int[] Mounts(LevelSets set)
    {
        var turns = set[mount].ToArray().Select(Turns).ToHashSet();
        return [.. Enumerable.Range(0, Levels(mount).Count).Where(l => turns.Contains(Turns(l)))];
    }

    private bool Turns(int level) => Levels(mount)[level].Part is CollectorMount { Turning: not TurningKind.Fixed };

    // What always comes with groups beside the parts chosen: small parts, and the supply of current for all of them.
    private Costs Rest(LevelSets set, List<PartGroup> present)
    {
        var mounts = Mounts(set);
        var key = string.Join(';', present.Select(g => $"{g.Root}:{string.Join(',', set[g.Root].ToArray())}{(g.Under.Contains(mount) ? "/" + string.Join(',', mounts) : "")}"));
        if (rests.TryGetValue(key, out var known))
            return known;
        int[] places = [.. present.SelectMany(g => g.Under.Prepend(g.Root)), .. supply];
        int[][] levels = [.. places.Select(i => present.Any(g => g.Root == i) ? set[i].ToArray() : All(i, mounts))];
        return rests[key] = Descent.Least(levels, point =>
        {
            var priced = assessor.Price(At(places, point));
            return (own.Floor(priced) - Direct(present, places, point), priced.Built.Missing.Count);
        });
    }

    private Costs Direct(List<PartGroup> present, int[] places, int[] point)
    {
        var sum = new Costs(0, 0);
        for (var i = 0; i < places.Length; i++)
        {
            if (present.Find(g => g.Root == places[i]) is { } group)
                sum += (group.Count < 0 ? 1 : Levels(group.Count)[point[Array.IndexOf(places, group.Count)]].Number) * parts[places[i]][point[i]];
            else if (IsCounted(places[i]))
                sum += parts[places[i]][point[i]];
        }

        return sum;
    }

    private int[] All(int choice, int[] mounts) => choice == mount ? mounts : [.. Enumerable.Range(0, Levels(choice).Count)];

    // A layout with some choices made and nothing else added, whether or not the scenario offers that.
    private Layout At(int[] places, int[] point)
    {
        var choices = assessor.Scenario.Systems.Choices;
        ChoiceValue[] values = [.. choices.All.Select((c, i) => c is PartChoice { IsRoot: true } ? ChoiceValue.None : Levels(i)[0])];
        for (var i = 0; i < places.Length; i++)
            values[places[i]] = Levels(places[i])[point[i]];
        return Layout.Of(values, choices);
    }

    // Finds how much of each part is always listed; tells whether the group ever draws current.
    private bool Learn(PartGroup group)
    {
        var draws = false;
        if (Levels(group.Root).All(l => l.IsNone))
            return false;
        int[] places = [group.Root, .. group.Under];
        for (var at = 0; at < places.Length; at++)
        {
            if (assessor.Scenario.Choices[places[at]].Choice is not PartChoice)
                continue;
            for (var level = 0; level < Levels(places[at]).Count; level++)
            {
                if (Levels(places[at])[level].Part is not { } part)
                    continue;
                var least = decimal.MaxValue;
                for (var context = 0; context < Contexts; context++)
                {
                    var layout = At(places, Context(places, at, level, context));
                    least = Math.Min(least, own.Quantities(layout).FirstOrDefault(q => q.Id == part.Info.Id).Quantity);
                    draws |= LayoutBuilder.Begin(assessor.Scenario, layout).Systems.Any(s => s.Circuits.Any());
                }

                parts[places[at]][level] = own.CostOf(part, group.Count >= 0 && places[at] == group.Root ? least / (decimal)LeastNumber(group.Count) : least);
            }
        }

        return draws;
    }

    private double LeastNumber(int choice) => Levels(choice).Min(l => l.Number);

    // Numbers at their lowest, other parts drawn; never without the root.
    private int[] Context(int[] places, int at, int level, int context)
    {
        var random = new Random((1000 * at) + context);
        return
        [
            .. places.Select((place, i) =>
            {
                var levels = Levels(place);
                int[] some = [.. Enumerable.Range(0, levels.Count).Where(l => i > 0 || !levels[l].IsNone)];
                return i == at ? level
                    : assessor.Scenario.Choices[place].Choice is NumberChoice ? some.MinBy(l => levels[l].Number) : some[random.Next(some.Length)];
            }),
        ];
    }
}
