namespace DesignSearch.Season.Flows;

/// <summary>
/// Where heat comes from and goes to outside the plant, and the one store that every plant has. What stores heat is an account of
/// its own: see <see cref="Store"/>.
/// </summary>
public static class Accounts
{
    /// <summary>The house with all in it that is counted as its own.</summary>
    public const string House = "house";

    /// <summary>The sun.</summary>
    public const string Sun = "sun";

    /// <summary>Electricity that becomes heat.</summary>
    public const string Mains = "mains";

    /// <summary>The air outside.</summary>
    public const string OutsideAir = "outside-air";

    /// <summary>The sky.</summary>
    public const string Sky = "sky";

    /// <summary>A heated room behind the house's back wall.</summary>
    public const string RoomBehind = "room-behind";

    /// <summary>The undisturbed ground.</summary>
    public const string Ground = "ground";
}
