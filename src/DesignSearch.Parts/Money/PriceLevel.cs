namespace DesignSearch.Parts.Money;

/// <summary>Which of a part's prices is paid.</summary>
public enum PriceLevel
{
    /// <summary>The usual price.</summary>
    Usual,

    /// <summary>The low price.</summary>
    Low,

    /// <summary>The high price.</summary>
    High,

    /// <summary>The second-hand price, or the usual one where there is none.</summary>
    SecondHand,
}
