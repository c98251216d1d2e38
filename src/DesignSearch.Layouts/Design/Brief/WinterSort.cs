namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What a scenario may ask for as a winter.</summary>
public enum WinterSort
{
    /// <summary>The winters a weather file holds, or one made from the monthly means.</summary>
    Typical,

    /// <summary>Winters drawn by chance from the file's or from the means, each with a lowest night of its own.</summary>
    Drawn,

    /// <summary>A typical winter with the stress week of a return period laid over it.</summary>
    Hard,
}
