namespace DesignSearch.Search.Indicators;

/// <summary>Pareto dominance; every objective is minimised.</summary>
public static class Dominance
{
    /// <summary>Whether a is nowhere worse than b and somewhere better.</summary>
    /// <param name="a">Objectives.</param>
    /// <param name="b">As many objectives.</param>
    public static bool Dominates(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var better = false;
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] > b[i])
                return false;
            better |= a[i] < b[i];
        }

        return better;
    }

    /// <summary>Whether a is nowhere worse than b.</summary>
    /// <param name="a">Objectives.</param>
    /// <param name="b">As many objectives.</param>
    public static bool Covers(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] > b[i])
                return false;
        }

        return true;
    }

    /// <summary>Dominance under constraints: the lesser violation wins; among equals that meet them all, the objectives decide.</summary>
    /// <param name="a">A result.</param>
    /// <param name="b">Another result of the same problem.</param>
    /// <remarks>After Deb, Pratap, Agarwal and Meyarivan, 2002.</remarks>
    public static bool Dominates(Evaluation a, Evaluation b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        double va = a.TotalViolation, vb = b.TotalViolation;
        return va != vb ? va < vb : va == 0 && Dominates(a.Objectives, b.Objectives);
    }
}
