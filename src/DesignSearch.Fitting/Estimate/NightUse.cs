namespace DesignSearch.Fitting.Estimate;

/// <summary>What became of a night.</summary>
public enum NightUse
{
    /// <summary>Fitted.</summary>
    Fitted,

    /// <summary>Something of it is not known.</summary>
    NotWhole,

    /// <summary>It belongs to another house: a door ajar, snow, a sensor that was moved.</summary>
    Other,
}
