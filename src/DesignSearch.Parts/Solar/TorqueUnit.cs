namespace DesignSearch.Parts.Solar;

/// <summary>Units in which torque is sold.</summary>
public enum TorqueUnit
{
    /// <summary>Newton metre.</summary>
    Nm,

    /// <summary>Kilogram-force centimetre, 0.0980665 N·m exactly.</summary>
    KgfCm,

    /// <summary>What the trade writes for the kilogram-force centimetre (common practice, no source).</summary>
    KgCm,
}
