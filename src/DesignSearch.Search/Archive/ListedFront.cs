using DesignSearch.Search.Engine;
using DesignSearch.Search.Indicators;

namespace DesignSearch.Search.Archive;

/// <summary>The archive of one objective or of three and more: a plain list.</summary>
internal sealed class ListedFront : FrontArchive
{
    private readonly List<EvaluatedPoint> members = [];

    public override int Count => members.Count;

    public override EvaluatedPoint this[int place] => members[place];

    public override bool Covers(ReadOnlySpan<double> objectives)
    {
        foreach (var member in members)
        {
            if (Dominance.Covers(member.Evaluation.Objectives, objectives))
                return true;
        }

        return false;
    }

    public override bool Add(EvaluatedPoint point)
    {
        if (Covers(point.Evaluation.Objectives))
            return false;
        members.RemoveAll(m => Dominance.Covers(point.Evaluation.Objectives, m.Evaluation.Objectives));
        members.Add(point);
        return true;
    }
}
