using DesignSearch.Search.Engine;

namespace DesignSearch.Search.Archive;

/// <summary>The best few by merit, best first; of equals the earlier stands before.</summary>
internal sealed class BestByMerit(int capacity)
{
    private readonly List<EvaluatedPoint> members = [];

    public IReadOnlyList<EvaluatedPoint> Members => members;

    public void Add(EvaluatedPoint point)
    {
        var merit = point.Evaluation.Merit;
        if (capacity == 0 || (members.Count == capacity && members[^1].Evaluation.Merit >= merit))
            return;
        int low = 0, high = members.Count;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (members[middle].Evaluation.Merit >= merit)
                low = middle + 1;
            else
                high = middle;
        }

        if (members.Count == capacity)
            members.RemoveAt(capacity - 1);
        members.Insert(low, point);
    }
}
