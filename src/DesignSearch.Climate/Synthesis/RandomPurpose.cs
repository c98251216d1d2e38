namespace DesignSearch.Climate.Synthesis;

/// <summary>What a stream of random numbers is for, so that a new use never shifts an old one.</summary>
internal enum RandomPurpose
{
    /// <summary>Daily temperatures and clearness.</summary>
    Days = 1,

    /// <summary>Clearness within the day.</summary>
    Clouds = 2,

    /// <summary>Wind.</summary>
    Wind = 3,

    /// <summary>Drawing spells from a record.</summary>
    Spells = 4,

    /// <summary>Drawing the lowest temperature of a year.</summary>
    Lowest = 5,

    /// <summary>Restlessness of the air's temperature within the day.</summary>
    Unrest = 6,

    /// <summary>Cover of the sky by cloud.</summary>
    Cover = 7,
}
