namespace DesignSearch.Climate.Winters;

/// <summary>Where a winter comes from and what it stands for.</summary>
public enum WinterKind
{
    /// <summary>A typical winter: synthetic from monthly means, or a typical-year file.</summary>
    Typical,

    /// <summary>A winter made as hard as the builder must fear.</summary>
    Hard,

    /// <summary>A real winter, its two halves from consecutive years.</summary>
    Recorded,

    /// <summary>A winter joined from the two ends of one calendar year.</summary>
    Joined,
}
