namespace DesignSearch.Search;

/// <summary>
/// A small set of parents. When it is full, each newcomer costs one member: the worst violator while there is one, else the
/// one that most others dominate, and among equals the one with the nearest neighbour.
/// </summary>
internal sealed class Population(int capacity)
{
    private readonly List<EvaluatedPoint> members = [];

    public int Count => members.Count;

    public EvaluatedPoint this[int place] => members[place];

    public void Add(EvaluatedPoint point)
    {
        members.Add(point);
        if (members.Count > capacity)
            members.RemoveAt(Worst());
    }

    private int Worst()
    {
        var worst = 0;
        var worstViolation = 0.0;
        for (var i = 0; i < members.Count; i++)
        {
            var violation = members[i].Evaluation.TotalViolation;
            if (violation > worstViolation)
                (worst, worstViolation) = (i, violation);
        }

        return worstViolation > 0 ? worst : Crowded(MostDominated());
    }

    private List<int> MostDominated()
    {
        var chosen = new List<int>();
        var most = 0;
        for (var i = 0; i < members.Count; i++)
        {
            var times = 0;
            for (var j = 0; j < members.Count; j++)
            {
                if (Dominance.Dominates(members[j].Evaluation.Objectives, members[i].Evaluation.Objectives))
                    times++;
            }

            if (times > most)
                chosen.Clear();
            if (times >= most)
                chosen.Add(i);
            most = Math.Max(most, times);
        }

        return chosen;
    }

    private int Crowded(List<int> candidates)
    {
        if (candidates.Count == 1)
            return candidates[0];
        var objectives = members[0].Evaluation.Objectives.Length;
        var width = new double[objectives];
        for (var k = 0; k < objectives; k++)
            width[k] = Math.Max(members.Max(m => m.Evaluation.Objectives[k]) - members.Min(m => m.Evaluation.Objectives[k]), double.Epsilon);
        var worst = candidates[0];
        var least = double.PositiveInfinity;
        foreach (var i in candidates)
        {
            var nearest = double.PositiveInfinity;
            for (var j = 0; j < members.Count; j++)
            {
                if (j == i)
                    continue;
                var distance = 0.0;
                for (var k = 0; k < objectives; k++)
                {
                    var step = (members[i].Evaluation.Objectives[k] - members[j].Evaluation.Objectives[k]) / width[k];
                    distance += step * step;
                }

                nearest = Math.Min(nearest, distance);
            }

            if (nearest < least)
                (worst, least) = (i, nearest);
        }

        return worst;
    }
}
