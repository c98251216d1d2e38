namespace DesignSearch.Layouts.Design;

/// <summary>The worst that can come of a danger.</summary>
public enum Harm
{
    /// <summary>Plants or things are lost.</summary>
    Spoils = 0,

    /// <summary>A person is hurt.</summary>
    Injures = 1,

    /// <summary>A person may die.</summary>
    Kills = 2,
}
