namespace DesignSearch.Season.Benches;

/// <summary>
/// A bench as store and conductances; names and equations in docs/model.md, "Bench under fleece". Every field is of the same type:
/// one layout's number, or a lane of them.
/// </summary>
internal struct BenchTerms<TNumber>
    where TNumber : unmanaged
{
    /// <summary>1 with a bench, 0 without.</summary>
    public TNumber IsPresent;

    /// <summary>Heat capacity over the step [W/K].</summary>
    public TNumber Store;

    /// <summary>Bench to house air [W/K].</summary>
    public TNumber ToAir;

    /// <summary>Bench to the inside of the cover [W/K].</summary>
    public TNumber ToCover;

    /// <summary>Both over what they are with the fleece closed, while it is open by day.</summary>
    public TNumber OpenFactor;

    /// <summary>Air above which it is opened by day [°C].</summary>
    public TNumber OpenAboveC;

    /// <summary>Largest electric heat [W].</summary>
    public TNumber PowerW;

    /// <summary>Temperature that the heat holds [°C].</summary>
    public TNumber SetC;

    /// <summary>Bench when the winter begins [°C].</summary>
    public TNumber StartC;
}
