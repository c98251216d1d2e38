namespace DesignSearch.Season.Compost;

/// <summary>
/// A heap as store, conductances and rates; names and equations in docs/model.md, "Compost heap". Every field is of the same type:
/// one layout's number, or a lane of them.
/// </summary>
internal struct CompostTerms<TNumber>
    where TNumber : unmanaged
{
    /// <summary>Heat capacity over the step [W/K].</summary>
    public TNumber Store;

    /// <summary>Core to outside air [W/K].</summary>
    public TNumber Loss;

    /// <summary>Heat that steam takes above <see cref="SteamFromC"/> [W/K].</summary>
    public TNumber Steam;

    /// <summary>Core above which steam leaves the heap [°C].</summary>
    public TNumber SteamFromC;

    /// <summary>Heat of each kilogram that rots [J/kg].</summary>
    public TNumber HeatJPerKg;

    /// <summary>Core to house air while the pump runs in full [W/K].</summary>
    public TNumber Coil;

    /// <summary>Electricity of the pump [W].</summary>
    public TNumber PumpW;

    /// <summary>Air that the draw holds [°C].</summary>
    public TNumber SetC;

    /// <summary>Core below which the pump rests [°C].</summary>
    public TNumber RestBelowC;

    /// <summary>How fast the pump comes in as the core warms [1/K].</summary>
    public TNumber PerFadeK;

    /// <summary>Core over the set point below which the coil gives nothing [K].</summary>
    public TNumber AboveSetK;

    /// <summary>Rate of rotting at 20 °C [1/d].</summary>
    public TNumber RatePerDay;

    /// <summary>Most that heat speeds rotting up, over the rate at 20 °C.</summary>
    public TNumber RateFactorMost;

    /// <summary>Core when the winter begins [°C].</summary>
    public TNumber StartC;

    /// <summary>Biodegradable solids when the winter begins [kg].</summary>
    public TNumber DegradableKg;

    /// <summary>Days after the season's start at which it is built; 0 or less: it stands when the winter begins [d].</summary>
    public TNumber BuiltDays;
}
