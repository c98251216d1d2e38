namespace DesignSearch.Season.House;

/// <summary>A house as stores, conductances and shares; equations in docs/model.md, "House". Every field is of the same type: one house's number, or a lane of them.</summary>
/// <remarks>
/// The one description of these numbers: <see cref="HouseTerms.From"/> makes them, <see cref="Lanes.Lift"/> lays several houses
/// side by side, the block reads them.
/// </remarks>
internal struct HouseTerms<TNumber>
    where TNumber : unmanaged
{
    /// <summary>Heat capacity of air and leaves [J/K].</summary>
    public TNumber AirStore;

    /// <summary>Heat capacity of the cover's outer surface, c [J/K].</summary>
    public TNumber CoverStore;

    /// <summary>Heat capacity of the floor's surface layer, f [J/K].</summary>
    public TNumber FloorStore;

    /// <summary>Heat capacity of the first layer of soil, s₁ [J/K].</summary>
    public TNumber Soil1Store;

    /// <summary>Heat capacity of the second, s₂ [J/K].</summary>
    public TNumber Soil2Store;

    /// <summary>Heat capacity of the third, s₃ [J/K].</summary>
    public TNumber Soil3Store;

    /// <summary>Heat capacity of the barrels' water, w [J/K].</summary>
    public TNumber BarrelStore;

    /// <summary>The same of their ice [J/K].</summary>
    public TNumber BarrelIce;

    /// <summary>Heat that they give while all of it freezes [J].</summary>
    public TNumber BarrelMelts;

    /// <summary>Heat capacity of the back wall's mass, m [J/K].</summary>
    public TNumber WallStore;

    /// <summary>Leaves and benches at the air's temperature to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber InnerAir;

    /// <summary>Air to the cover's inner surface, by convection, over the cube root of their difference [W/K^(4/3)].</summary>
    public TNumber InnerAirPerRoot;

    /// <summary>Floor to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber InnerFloor;

    /// <summary>Heat capacity of what stands in the house, k [J/K].</summary>
    public TNumber ContentsStore;

    /// <summary>Contents to air [W/K].</summary>
    public TNumber ContentsAir;

    /// <summary>Contents to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber ContentsInner;

    /// <summary>Floor to a colder inner surface as vapour [W/K].</summary>
    public TNumber Latent;

    /// <summary>Wall face to the cover's inner surface, long-wave [W/K].</summary>
    public TNumber InnerWall;

    /// <summary>Floor through the cover's inner layers to its outer surface, long-wave [W/K].</summary>
    public TNumber FloorCover;

    /// <summary>4 σ A and a share: floor through the cover to what lies outside [W/K⁴].</summary>
    public TNumber FloorOutWPerK4;

    /// <summary>The same from leaves and benches at the air's temperature [W/K⁴].</summary>
    public TNumber AirOutWPerK4;

    /// <summary>The same from the cover's inner surface [W/K⁴].</summary>
    public TNumber InnerOutWPerK4;

    /// <summary>Share of the sky in what the cover sees [0…1].</summary>
    public TNumber SkyView;

    /// <summary>1 where a person draws the night cover, else 0.</summary>
    public TNumber CoverByHand;

    /// <summary>1 where a light sensor does, else 0.</summary>
    public TNumber CoverBySensor;

    /// <summary>1 where a timer does, else 0.</summary>
    public TNumber CoverByClock;

    /// <summary>1 where a night cover ends all radiation through the cover while it is closed, 0 without one.</summary>
    public TNumber CoverBlocks;

    /// <summary>ε σ F A: outer surface to the sky [W/K⁴].</summary>
    public TNumber SkyWPerK4;

    /// <summary>Floor to air, the mean of what rises from a warmer floor and sinks to a colder one [W/K].</summary>
    public TNumber FloorAir;

    /// <summary>Half of the difference of the two [W/K].</summary>
    public TNumber FloorAirSwing;

    /// <summary>Floor to wall face, long-wave [W/K].</summary>
    public TNumber FloorWall;

    /// <summary>Wall face to air [W/K].</summary>
    public TNumber WallAir;

    /// <summary>Wall face to the wall's mass [W/K].</summary>
    public TNumber WallMass;

    /// <summary>Floor to the first layer of soil [W/K].</summary>
    public TNumber FloorSoil;

    /// <summary>First to second layer [W/K].</summary>
    public TNumber Soil12;

    /// <summary>Second to third layer [W/K].</summary>
    public TNumber Soil23;

    /// <summary>Barrels to air [W/K].</summary>
    public TNumber BarrelAir;

    // From here on, what is read once an hour or once a winter.

    /// <summary>Inner to outer surface of the cover with the night cover open [W/K].</summary>
    public TNumber LinkOpen;

    /// <summary>The same with it closed [W/K].</summary>
    public TNumber LinkClosed;

    /// <summary>Outer surface to the air outside in still air [W/K].</summary>
    public TNumber OuterStill;

    /// <summary>What each metre per second at the roof adds to it [W/K per m/s].</summary>
    public TNumber OuterPerWind;

    /// <summary>4 ε σ (1 − F) A: outer surface to what else it sees [W/K⁴].</summary>
    public TNumber AroundWPerK4;

    /// <summary>The wall's mass to the air outside [W/K].</summary>
    public TNumber MassOutside;

    /// <summary>Wall mass to a heated room behind it, whose heat is a source's [W/K].</summary>
    public TNumber MassRoom;

    /// <summary>Third layer to the undisturbed ground [W/K].</summary>
    public TNumber SoilDeep;

    /// <summary>Floor to the air outside, round the edge [W/K].</summary>
    public TNumber Edge;

    /// <summary>Air that leaks without wind [m³/s].</summary>
    public TNumber LeakM3PerS;

    /// <summary>What each metre per second at the roof adds to it [m³/s per m/s].</summary>
    public TNumber LeakM3PerSPerWind;

    /// <summary>Share of the sun through the bare cover that warms the air [0…1].</summary>
    public TNumber SunAir;

    /// <summary>Share that the floor takes [0…1].</summary>
    public TNumber SunFloor;

    /// <summary>Share that the contents take [0…1].</summary>
    public TNumber SunContents;

    /// <summary>Share that the barrels take [0…1].</summary>
    public TNumber SunBarrels;

    /// <summary>Share that the wall's face takes [0…1].</summary>
    public TNumber SunWall;

    /// <summary>Largest loss through opened vents [W/K].</summary>
    public TNumber Vent;

    /// <summary>Air at which the vents begin to open [°C].</summary>
    public TNumber VentAboveC;

    /// <summary>Release: tank's top to air, no more than its water carries [W/K].</summary>
    public TNumber Release;

    /// <summary>Release: air that its thermostat holds [°C].</summary>
    public TNumber ReleaseSetC;

    /// <summary>Release: electricity of pump and fan while it runs in full; all of it warms the air [W].</summary>
    public TNumber FanW;

    /// <summary>Release: share of its heat that it radiates [0…1].</summary>
    public TNumber ReleaseRadiates;

    /// <summary>Heater: largest power [W].</summary>
    public TNumber HeaterW;

    /// <summary>Heater: air that its thermostat holds [°C].</summary>
    public TNumber HeaterSetC;

    /// <summary>Heater: share of its heat that it radiates [0…1].</summary>
    public TNumber HeaterRadiates;

    /// <summary>An hour whose mean of the plants' air lies below it is a frost hour [°C].</summary>
    public TNumber FrostLimitC;

    /// <summary>Release: tank's top at which its thermostat stops it [°C].</summary>
    public TNumber ReleaseStopC;

    /// <summary>Release: tank's top at which that lets it run again [°C].</summary>
    public TNumber ReleaseStartC;
}
