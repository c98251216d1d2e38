namespace DesignSearch.Parts.HeatPumps;

/// <summary>What a refrigerant can do to people (safety classes of ISO 817).</summary>
public enum RefrigerantClass
{
    /// <summary>Of low toxicity, does not burn.</summary>
    A1,

    /// <summary>Of low toxicity, burns slowly.</summary>
    A2l,

    /// <summary>Of low toxicity, burns like bottled gas.</summary>
    A3,
}
