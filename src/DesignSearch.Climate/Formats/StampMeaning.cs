namespace DesignSearch.Climate.Formats;

/// <summary>What a value has to do with the stamp of its row.</summary>
internal enum StampMeaning
{
    /// <summary>Value at the stamp.</summary>
    Instant,

    /// <summary>Mean of the interval that ends at the stamp.</summary>
    Ending,

    /// <summary>Mean of the interval that starts at the stamp.</summary>
    Starting,

    /// <summary>An instant a little after the stamp, as the head says, or the mean of the interval that starts there: the sun decides.</summary>
    InstantOrStarting,
}
