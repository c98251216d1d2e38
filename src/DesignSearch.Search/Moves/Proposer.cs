using DesignSearch.Search.Archive;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Moves;

/// <summary>Makes new points from those met: crossing, mixing archive neighbours, difference steps, one-variable neighbours, restarts.</summary>
internal sealed class Proposer(SearchSpace space, Draws draws, FrontArchive archive, Population population)
{
    private const int Drawn = 6;

    private readonly Credit credit = new(5, 0.06);

    /// <summary>How the last point was made; negative for the start.</summary>
    public int Way { get; private set; } = -1;

    /// <summary>Whom the last point was made from.</summary>
    public Descent Descent { get; private set; }

    public void Book(int way, double gain)
    {
        if (way >= 0)
            credit.Book(way, gain);
    }

    /// <summary>A point in canonical form; the first few are spread evenly over every variable.</summary>
    public double[] Propose(long index, ref SplitMixStream random, ulong seed)
    {
        var point = index < Draws.Stratified ? draws.Start((int)index, ref random, seed) : Move(ref random);
        space.Canonicalise(point);
        return point;
    }

    private double[] Move(ref SplitMixStream random)
    {
        (Way, Descent) = (-1, default);
        if (population.Count < 4)
            return draws.Anywhere(ref random);
        Way = credit.Choose(ref random);
        return Way switch
        {
            0 => Cross(ref random),
            1 => Mix(ref random),
            2 => Step(ref random),
            3 => Neighbour(ref random),
            _ => Jump(ref random),
        };
    }

    private double[] Cross(ref SplitMixStream random)
    {
        Descent = new(Parent(ref random), Parent(ref random), 0.5);
        var child = (double[])Descent.First!.Point.Clone();
        var other = Descent.Second!.Point;
        for (var i = 0; i < child.Length; i++)
        {
            if (random.Below(2) == 0)
                child[i] = other[i];
        }

        var rate = Math.Max(1.0 / child.Length, 0.02);
        for (var i = 0; i < child.Length; i++)
        {
            if (random.Unit() < rate)
                draws.Redraw(child, i, ref random);
        }

        return child;
    }

    private double[] Mix(ref SplitMixStream random)
    {
        if (archive.Count < 2)
            return TowardsBest(ref random);
        var place = Place(ref random);
        Descent = new(archive[place], archive[Near(place, ref random)], 0.5);
        double[] a = Descent.First!.Point, b = Descent.Second!.Point;
        var child = new double[a.Length];
        if (random.Below(2) == 0)
        {
            var along = (2.2 * random.Unit()) - 0.6;
            Descent = Descent with { ShareOfSecond = Math.Clamp(along, 0, 1) };
            for (var i = 0; i < child.Length; i++)
                child[i] = space.Variables[i].Kind == VariableKind.Category ? (along < 0.5 ? a[i] : b[i]) : draws.Rounded(i, a[i] + (along * (b[i] - a[i])), ref random);
            return child;
        }

        for (var i = 0; i < child.Length; i++)
        {
            var between = random.Unit();
            child[i] = space.Variables[i].Kind == VariableKind.Category ? (between < 0.5 ? a[i] : b[i]) : draws.Rounded(i, a[i] + (between * (b[i] - a[i])), ref random);
        }

        if (random.Below(2) == 0)
            draws.Redraw(child, random.Below(child.Length), ref random);
        return child;
    }

    // With a single best: part of the way to it, and a difference of two others (Storn and Price, 1997).
    private double[] TowardsBest(ref SplitMixStream random)
    {
        if (archive.Count == 0 || archive[0].Evaluation.Objectives.Length > 1)
            return Cross(ref random);
        double[] from = Parent(ref random).Point, a = Parent(ref random).Point, b = Parent(ref random).Point, best = archive[0].Point;
        double near = random.Unit(), scale = 0.3 + (0.6 * random.Unit());
        var child = (double[])from.Clone();
        for (var i = 0; i < child.Length; i++)
        {
            if (random.Below(5) > 0)
                child[i] = space.Variables[i].Kind == VariableKind.Category
                    ? (near < 0.5 ? from[i] : best[i])
                    : draws.Rounded(i, from[i] + (near * (best[i] - from[i])) + (scale * (a[i] - b[i])), ref random);
        }

        return child;
    }

    private double[] Step(ref SplitMixStream random)
    {
        Descent = new(Parent(ref random));
        double[] a = Parent(ref random).Point, b = Parent(ref random).Point;
        if (archive.Count > 3 && random.Below(4) == 0)
        {
            var place = Place(ref random);
            Descent = new(archive[place]);
            var other = Near(place, ref random);
            (a, b) = (archive[other].Point, archive[Near(other, ref random)].Point);
        }

        var scale = 0.3 + (0.7 * random.Unit());
        var from = Descent.First!.Point;
        var child = (double[])from.Clone();
        var always = random.Below(child.Length);
        var whole = random.Below(2) == 0;
        for (var i = 0; i < child.Length; i++)
        {
            if (i != always && !whole && random.Below(2) == 0)
                continue;
            child[i] = space.Variables[i].Kind == VariableKind.Category ? a[i] : draws.Rounded(i, from[i] + (scale * (a[i] - b[i])), ref random);
        }

        return child;
    }

    // A parent with a few variables drawn anew.
    private double[] Jump(ref SplitMixStream random)
    {
        if (random.Below(8) == 0)
            return draws.Anywhere(ref random);
        Descent = new(Parent(ref random));
        var child = (double[])Descent.First!.Point.Clone();
        for (var change = 2 + random.Below(3); change > 0; change--)
            draws.Redraw(child, random.Below(child.Length), ref random);
        return child;
    }

    private double[] Neighbour(ref SplitMixStream random)
    {
        Descent = new(archive.Count > 0 ? archive[Place(ref random)] : Parent(ref random));
        var child = (double[])Descent.First!.Point.Clone();
        draws.Redraw(child, random.Below(child.Length), ref random);
        return child;
    }

    private EvaluatedPoint Parent(ref SplitMixStream random) =>
        archive.Count > 0 && random.Below(archive.Count < 4 ? 10 : 2) == 0 ? archive[Place(ref random)] : population[random.Below(population.Count)];

    // A place in the archive: the one with the widest gap beside it, of a few drawn.
    private int Place(ref SplitMixStream random)
    {
        var chosen = random.Below(archive.Count);
        if (archive is not SortedFront || archive.Count < 3)
            return chosen;
        var alone = random.Below(4) != 0;
        var widest = alone ? Alone(chosen) : Gap(chosen);
        for (var draw = 1; draw < Drawn; draw++)
        {
            var place = random.Below(archive.Count);
            var gap = alone ? Alone(place) : Gap(place);
            if (gap > widest)
                (chosen, widest) = (place, gap);
        }

        return chosen;
    }

    // The rectangle that the neighbours span; at an end the nearest inner one's.
    private double Gap(int place)
    {
        var middle = Math.Clamp(place, 1, archive.Count - 2);
        double[] before = archive[middle - 1].Evaluation.Objectives, after = archive[middle + 1].Evaluation.Objectives;
        return (after[0] - before[0]) * (before[1] - after[1]);
    }

    // What the front would lose without it; at an end the nearest inner one's.
    private double Alone(int place)
    {
        var middle = Math.Clamp(place, 1, archive.Count - 2);
        double[] before = archive[middle - 1].Evaluation.Objectives, own = archive[middle].Evaluation.Objectives, after = archive[middle + 1].Evaluation.Objectives;
        return (after[0] - own[0]) * (before[1] - own[1]);
    }

    private int Near(int place, ref SplitMixStream random)
    {
        var step = 1 + random.Below(3);
        var near = random.Below(2) == 0 ? place + step : place - step;
        return near >= 0 && near < archive.Count ? near : Math.Clamp(place - (near - place), 0, archive.Count - 1);
    }
}
