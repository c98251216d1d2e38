using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Small;
using DesignSearch.Season;
using DesignSearch.Season.Barrels;

namespace DesignSearch.Layouts.Systems.Barrels;

/// <summary>The barrels of one layout.</summary>
internal sealed class DesignedBarrels(Barrel barrel, double count, double floorM2) : DesignedSystem
{
    // Barrels are filled to the neck, and stand so that the sun strikes their upright side (estimates, no source).
    private const double Filled = 0.97;
    private const double SunlitShareOfSide = 0.5;
    private const double MostSun = 0.35;

    // Ice over water at 0 °C, by volume: densities 917 and 1000 kg/m³ (CRC Handbook, from memory).
    private const double IceGrowth = 0.09;

    public override double StoreFloorM2 => count * barrel.DiameterM * barrel.DiameterM;

    public override FloorLoad? FloorLoad =>
        new(BarrelWords.Store, (barrel.VolumeL + barrel.EmptyKg) / (Math.PI / 4 * barrel.DiameterM * barrel.DiameterM));

    public override IEnumerable<string> Words => [BarrelWords.Title((int)count, Water)];

    public override IEnumerable<Caution> Cautions => [Dangers.WeightAndDrowning, BarrelWords.Ice(Filled, 1 / (1 + IceGrowth))];

    public override IEnumerable<Upkeep> Upkeep => BarrelWords.Upkeep;

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => BarrelWords.Steps(Filled, ground);

    private double Water => count * barrel.VolumeL * Filled;

    public override Installation Install(Installation plant)
    {
        var side = Math.PI * barrel.DiameterM * barrel.HeightM;
        var top = Math.PI / 4 * barrel.DiameterM * barrel.DiameterM;
        var sun = Math.Min(MostSun, count * barrel.DiameterM * barrel.HeightM * SunlitShareOfSide / floorM2);
        return plant with { Barrels = new BarrelNumbers(Water, count * (side + top), sun) };
    }

    public override void List(Needs needs)
    {
        needs.Add(barrel, count, BarrelWords.Barrel);
        needs.Small(SmallPartRole.Lid, count, BarrelWords.Lid);
        needs.Small(SmallPartRole.WaterTreatment, 1, BarrelWords.Treatment);
    }

    public override IEnumerable<Body> Bodies(Scenario scenario) =>
        [new(BarrelWords.Store, BodyShape.Round, (int)count, barrel.DiameterM, barrel.DiameterM, barrel.HeightM)];

    public override void Draw(SchemeSketch sketch) =>
        sketch.Add(sketch.Put(BarrelWords.Barrel, BarrelWords.Store, Symbol.Plain, Spot.House), BarrelWords.Lid, BarrelWords.Treatment);
}
