namespace DesignSearch.Season.Walls;

/// <summary>A base wall as stores and conductances; equations in docs/model.md, "House". Every field is of the same type: one house's number, or a lane of them.</summary>
internal struct BaseWallTerms<TNumber>
    where TNumber : unmanaged
{
    /// <summary>Heat capacity over the step of what stands above the ground [W/K].</summary>
    public TNumber OpenStore;

    /// <summary>Its mass to the air of the house [W/K].</summary>
    public TNumber OpenInside;

    /// <summary>Its mass to the air outside [W/K].</summary>
    public TNumber OpenOutside;

    /// <summary>Heat capacity over the step of what stands in the ground [W/K].</summary>
    public TNumber BuriedStore;

    /// <summary>Its mass to the air of the house [W/K].</summary>
    public TNumber BuriedInside;

    /// <summary>Its mass to undisturbed ground [W/K].</summary>
    public TNumber BuriedGround;

    /// <summary>What stands above the ground when the winter begins [°C].</summary>
    public TNumber OpenStartC;

    /// <summary>What stands in the ground, likewise [°C].</summary>
    public TNumber BuriedStartC;
}
