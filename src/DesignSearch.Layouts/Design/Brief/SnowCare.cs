namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What becomes of snow on the house's roof and on collectors.</summary>
public enum SnowCare
{
    /// <summary>None lies there.</summary>
    None,

    /// <summary>It is brushed off the next morning.</summary>
    Brushed,

    /// <summary>It is left until it slides or melts.</summary>
    Left,
}
