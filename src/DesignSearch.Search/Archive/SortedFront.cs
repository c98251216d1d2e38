using DesignSearch.Search.Engine;

namespace DesignSearch.Search.Archive;

/// <summary>The archive of two objectives: rising in the first, falling in the second, found by halving.</summary>
internal sealed class SortedFront : FrontArchive
{
    private readonly List<EvaluatedPoint> members = [];

    public override int Count => members.Count;

    public override EvaluatedPoint this[int place] => members[place];

    public override bool Covers(ReadOnlySpan<double> objectives)
    {
        var after = After(objectives[0]);
        return after > 0 && members[after - 1].Evaluation.Objectives[1] <= objectives[1];
    }

    public override double Limit(ReadOnlySpan<double> objectives, int objective)
    {
        if (objective == 1)
        {
            var after = After(objectives[0]);
            return after > 0 ? members[after - 1].Evaluation.Objectives[1] : double.PositiveInfinity;
        }

        int low = 0, high = members.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (members[middle].Evaluation.Objectives[1] > objectives[1])
                low = middle + 1;
            else
                high = middle;
        }

        return low < members.Count ? members[low].Evaluation.Objectives[0] : double.PositiveInfinity;
    }

    public override bool Add(EvaluatedPoint point)
    {
        var objectives = point.Evaluation.Objectives;
        if (Covers(objectives))
            return false;
        var first = After(objectives[0]);
        if (first > 0 && members[first - 1].Evaluation.Objectives[0] == objectives[0])
            first--;
        var end = first;
        while (end < members.Count && members[end].Evaluation.Objectives[1] >= objectives[1])
            end++;
        members.RemoveRange(first, end - first);
        members.Insert(first, point);
        return true;
    }

    // The place of the first member whose first objective is above the value.
    private int After(double value)
    {
        int low = 0, high = members.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (members[middle].Evaluation.Objectives[0] <= value)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
