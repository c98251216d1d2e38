namespace DesignSearch.Fitting.Estimate;

/// <summary>What became of a prior.</summary>
/// <param name="Prior">What was taken before.</param>
/// <param name="Value">The value now.</param>
/// <param name="Low">19 of 20 times it lies above this.</param>
/// <param name="High">And below this.</param>
/// <param name="IsLearnt">True where the log narrowed it enough to say so.</param>
public sealed record FigureFound(Prior Prior, double Value, double Low, double High, bool IsLearnt)
{
    /// <summary>19 of 20 times, in standard errors of the normal law.</summary>
    public const double NineteenOfTwenty = 1.96;

    /// <summary>Lower end of what the prior says, likewise.</summary>
    public double PriorLow => Prior.Usual * Math.Exp(-NineteenOfTwenty * Prior.Spread);

    /// <summary>Upper end of it.</summary>
    public double PriorHigh => Prior.Usual * Math.Exp(NineteenOfTwenty * Prior.Spread);

    /// <summary>What the prior says and nothing more.</summary>
    /// <param name="prior">The prior.</param>
    public static FigureFound Unlearnt(Prior prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        return new FigureFound(prior, prior.Usual, 0, 0, false) is var f ? f with { Low = f.PriorLow, High = f.PriorHigh } : f;
    }

    /// <summary>A figure by its logarithm against the usual one.</summary>
    /// <param name="prior">The prior.</param>
    /// <param name="log">The logarithm.</param>
    /// <param name="half">Half the width of its range, as a logarithm.</param>
    /// <param name="isLearnt">Whether the log told it.</param>
    public static FigureFound Of(Prior prior, double log, double half, bool isLearnt)
    {
        ArgumentNullException.ThrowIfNull(prior);
        var value = prior.Usual * Math.Exp(log);
        return new(prior, value, value * Math.Exp(-half), value * Math.Exp(half), isLearnt);
    }
}
