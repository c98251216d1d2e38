namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>Where a component stands.</summary>
public enum Spot
{
    /// <summary>In the dwelling.</summary>
    Dwelling,

    /// <summary>In the open, or under it in the ground.</summary>
    Outdoors,

    /// <summary>On or at the skin of the greenhouse.</summary>
    Skin,

    /// <summary>Inside the greenhouse.</summary>
    House,
}
