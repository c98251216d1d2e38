using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>Gathers layouts for a ranking: each once, with what is known of it.</summary>
/// <param name="judge">Judges them.</param>
/// <param name="later">Layouts that were found after the search.</param>
internal sealed class Shortlist(Judge judge, IReadOnlyList<Layout> later)
{
    private readonly List<Entry> entries = [.. later.Select(l => new Entry(l, judge.Of(l), IsLater: true, IsOnFront: true, IsKept: true))];
    private readonly HashSet<Layout> known = [.. later];

    private sealed record Entry(Layout Layout, JudgedLayout Judged, bool IsLater, bool IsOnFront, bool IsKept);

    /// <summary>Adds layouts; one that is in the list already, or that costs nothing, is passed over.</summary>
    /// <param name="layouts">The layouts.</param>
    /// <param name="isOnFront">Whether they are on the front of the search.</param>
    /// <param name="isKept">Whether they are ranked whatever their place.</param>
    public void Add(IEnumerable<Layout> layouts, bool isOnFront, bool isKept)
    {
        foreach (var layout in layouts)
        {
            if (known.Add(layout) && judge.Of(layout) is { BuildPrice: > 0 } judged)
                entries.Add(new(layout, judged, IsLater: false, isOnFront, isKept));
        }
    }

    /// <summary>The ranking, and the ranks of those on the front that nothing found later, or by the search, beats.</summary>
    /// <param name="most">How many to rank; those that are kept are ranked besides.</param>
    public (IReadOnlyList<JudgedLayout> Ranking, IReadOnlyList<int> Front) Rank(int most)
    {
        var paying = entries.Where(e => e.Judged.BuildPrice > 0).ToList();
        var always = paying.Where(e => e.IsKept).Select(e => e.Judged).ToHashSet(ReferenceEqualityComparer.Instance);
        var onFront = paying.Where(e => e.IsOnFront && !IsBeaten(e)).Select(e => e.Judged).ToHashSet(ReferenceEqualityComparer.Instance);
        var ranked = PickChooser.Rank(paying.Select(e => e.Judged), most, always.Contains);
        return ([.. ranked.Select(r => r.Layout with { Rank = r.Rank })], [.. ranked.Where(r => onFront.Contains(r.Layout)).Select(r => r.Rank)]);
    }

    private bool IsBeaten(Entry entry)
    {
        var own = entry.Judged;
        return entries.Any(other => other.Judged is { } o
            && other != entry
            && (other.IsLater ? o.PassesChecks && (o.LifeCost < own.LifeCost || o.FrostDegreeHoursKh < own.FrostDegreeHoursKh) : entry.IsLater && other.IsOnFront)
            && o.LifeCost <= own.LifeCost
            && o.FrostDegreeHoursKh <= own.FrostDegreeHoursKh);
    }
}
