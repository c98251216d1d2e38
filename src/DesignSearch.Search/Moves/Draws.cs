using DesignSearch.Search.Space;

namespace DesignSearch.Search.Moves;

/// <summary>Draws points and changes of points, knowing only the space.</summary>
internal sealed class Draws(SearchSpace space)
{
    /// <summary>How many points the start spreads.</summary>
    public const int Stratified = 32;

    // How many draws look for one that is awake.
    private const int AwakeDraws = 8;

    // What can take more than one value.
    private readonly int[] free = [.. Enumerable.Range(0, space.Count).Where(i => space.HighOf(i) > space.LowOf(i))];

    /// <summary>A point from anywhere, canonical.</summary>
    public double[] Anywhere(ref SplitMixStream random)
    {
        var point = new double[space.Count];
        for (var i = 0; i < point.Length; i++)
            point[i] = Value(i, random.Unit());
        space.Canonicalise(point);
        return point;
    }

    /// <summary>One of the first points, spread evenly over every variable (Latin hypercube): each has one shuffle of its strata, the same for every place.</summary>
    public double[] Start(int place, ref SplitMixStream random, ulong seed)
    {
        var point = new double[space.Count];
        Span<int> strata = stackalloc int[Stratified];
        for (var i = 0; i < point.Length; i++)
        {
            var shuffle = new SplitMixStream(seed, 1UL << 40, (ulong)i);
            for (var k = 0; k < Stratified; k++)
                strata[k] = k;
            for (var k = Stratified - 1; k > 0; k--)
            {
                var other = shuffle.Below(k + 1);
                (strata[k], strata[other]) = (strata[other], strata[k]);
            }

            point[i] = Value(i, (strata[place] + random.Unit()) / Stratified);
        }

        return point;
    }

    /// <summary>Changes one or two variables, in place, and brings the point into canonical form again.</summary>
    public void Disturb(double[] point, ref SplitMixStream random)
    {
        if (free.Length > 0)
            Disturb(point, Awake(point, ref random), ref random);
    }

    /// <summary>Changes one variable, and now and then others, in place, and brings the point into canonical form again.</summary>
    public void Disturb(double[] point, int variable, ref SplitMixStream random)
    {
        Change(point, variable, ref random);
        while (random.Below(3) == 0)
            Change(point, Awake(point, ref random), ref random);
        space.Canonicalise(point);
    }

    /// <summary>Draws a variable anew or near where it stands, in place; the point need not be canonical then.</summary>
    public void Redraw(double[] point, int variable, ref SplitMixStream random)
    {
        var one = space.Variables[variable];
        double low = space.LowOf(variable), high = space.HighOf(variable);
        if (one.Kind == VariableKind.Category || random.Below(4) == 0)
            point[variable] = Value(variable, random.Unit());
        else if (one.Kind == VariableKind.Real)
            point[variable] += random.Normal() * (high - low) * Math.Pow(10, -2 * random.Unit());
        else
            point[variable] += (random.Below(2) == 0 ? 1 : -1) * (1 + (random.Below(3) == 0 ? random.Below(Math.Max(1, one.Levels / 3)) : 0));
    }

    // One that can change and, as far as a few draws find one, is awake.
    private int Awake(double[] point, ref SplitMixStream random)
    {
        var chosen = free[random.Below(free.Length)];
        for (var draw = 0; draw < AwakeDraws && !space.IsAwake(chosen, point); draw++)
            chosen = free[random.Below(free.Length)];
        return chosen;
    }

    // Like a redraw, but never to the level where it stands.
    private void Change(double[] point, int variable, ref SplitMixStream random)
    {
        var one = space.Variables[variable];
        var old = point[variable];
        if (one.Kind == VariableKind.Category)
        {
            point[variable] = (old + 1 + random.Below(one.Levels - 1)) % one.Levels;
            return;
        }

        Redraw(point, variable, ref random);
        if (one.Kind == VariableKind.Ordered && Math.Clamp(point[variable], 0, one.Levels - 1) == old)
            point[variable] = old > 0 && (old == one.Levels - 1 || random.Below(2) == 0) ? old - 1 : old + 1;
    }

    private double Value(int variable, double share)
    {
        var one = space.Variables[variable];
        return one.Kind == VariableKind.Real ? one.Low + (share * (one.High - one.Low)) : Math.Floor(share * one.Levels);
    }

    /// <summary>A whole level where levels are whole: up or down at random, in proportion to what is left over, so that small steps are not lost.</summary>
    public double Rounded(int variable, double value, ref SplitMixStream random) =>
        space.Variables[variable].Kind == VariableKind.Real ? value : Math.Floor(value + random.Unit());
}
