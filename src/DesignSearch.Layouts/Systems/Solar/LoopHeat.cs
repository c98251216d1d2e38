using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>How hot a loop becomes in the states of the plant, and what keeps it from becoming hotter.</summary>
/// <param name="CeilingC">Temperature at the tank's top above which the pump stops [°C].</param>
/// <param name="LockOutC">Collector above which the pump is not started [°C].</param>
/// <param name="IsLockedOut">Whether it ever stands hotter than that; else only a torn sensor reads so.</param>
/// <param name="OutletC">Water that leaves the collector in full sun while the tank is at its ceiling [°C].</param>
/// <param name="ReturnC">Water that goes back to it, through the pump [°C].</param>
/// <param name="StartsAtC">Hottest water that leaves it when the pump starts on a collector that has stood [°C].</param>
/// <param name="StandsC">Collector that stands without flow in full sun [°C].</param>
/// <param name="SteamC">Steam or water that a filled loop pushes into its pipes meanwhile [°C]; null where it stands empty.</param>
public readonly record struct LoopHeat(
    double CeilingC,
    double LockOutC,
    bool IsLockedOut,
    double OutletC,
    double ReturnC,
    double StartsAtC,
    double StandsC,
    double? SteamC)
{
    // What bears least must stay clear of its limit (own choice).
    private const double MarginK = 5;

    // The cut-out leaves the controller room to act first, and what bears least a kelvin (own choice).
    private const double CutOutOverK = 4;

    // Water that enters a hotter collector boils and hammers (common practice, no source).
    private const double MostStartC = 95;
    private const double FullSunWPerM2 = 1000;

    /// <summary>Works it out.</summary>
    /// <param name="collector">The collector.</param>
    /// <param name="flowWPerM2K">Heat that the running water carries per area of collector [W/(m²K)].</param>
    /// <param name="exchanger">Share of the heat that an exchanger passes on, 1 without one.</param>
    /// <param name="storeBearsC">What bears least of tank, jacket and release [°C].</param>
    /// <param name="pump">The pump, on the cool pipe.</param>
    /// <param name="warmBearsC">What bears least of the long pipe and its sleeve [°C].</param>
    /// <param name="relief">Relief valve of a loop that stays full; null where it stands empty.</param>
    internal static LoopHeat Of(
        Collector collector, double flowWPerM2K, double exchanger, double storeBearsC, Pump pump, double warmBearsC, ReliefValve? relief)
    {
        // In full sun, what the collector loses left out; across an exchanger the loop runs that much hotter.
        var rise = collector.Eta0Beam * FullSunWPerM2 / flowWPerM2K;
        var outlet = rise / exchanger;
        var warm = Math.Min(warmBearsC - MarginK, MostStartC);
        var harms = collector.StagnationC > Math.Min(warmBearsC, MostStartC);
        var lockOut = harms ? warm : MostStartC;
        var ceiling = Math.Min(storeBearsC - MarginK, Math.Min(pump.MaxTemperatureC - MarginK - (outlet - rise), warm - outlet));
        double? steam = relief is null ? null : Math.Min(collector.StagnationC, WaterVapour.BoilsAtC(relief.OpensAtBar));
        var stands = collector.StagnationC;
        return new(ceiling, lockOut, harms, ceiling + outlet, ceiling + outlet - rise, Math.Min(stands, lockOut), stands, steam);
    }

    /// <summary>Temperature at which the cut-out in the tank's top stops the pump, whatever its sensors say [°C].</summary>
    public double CutOutC => CeilingC + CutOutOverK;

    /// <summary>Hottest that the long pipe meets in any state [°C].</summary>
    public double HottestC => Math.Max(Math.Max(OutletC, StartsAtC), SteamC ?? OutletC);

    /// <summary>What everything at the collector meets while it stands dry, or without flow, in full sun.</summary>
    public Duty AtCollector => Duty.Heat(PlantState.StandingInSun, StandsC);

    /// <summary>What the warm pipe meets while it runs.</summary>
    public Duty Warm => Duty.Heat(PlantState.Running, OutletC);

    /// <summary>What it meets at the start on a hot collector.</summary>
    public Duty Started => Duty.Heat(PlantState.StartedHot, StartsAtC);

    /// <summary>What all pipes of a filled loop meet while it stands; those of an empty one only what is left in the tank.</summary>
    public Duty Steam => Duty.Heat(PlantState.StandingInSun, SteamC ?? CeilingC);

    /// <summary>What the cool pipe meets while it runs.</summary>
    public Duty Cool => Duty.Heat(PlantState.Running, ReturnC);

    /// <summary>What meets the water that is let out, and the tank that it came from, in the evening.</summary>
    public Duty Drained => Duty.Heat(PlantState.Drained, CeilingC);

    /// <summary>What tank and release meet while it runs.</summary>
    public Duty Store => Duty.Heat(PlantState.Running, CeilingC);

    /// <summary>What they meet when the tank's sensor is dead and the pump runs on to the cut-out.</summary>
    public Duty StoreUnseen => Duty.Heat(PlantState.DeadSensor, CutOutC);

    /// <summary>What the warm pipe meets then.</summary>
    public Duty WarmUnseen => Duty.Heat(PlantState.DeadSensor, OutletC + CutOutOverK);

    /// <summary>What the cool pipe meets then.</summary>
    public Duty CoolUnseen => Duty.Heat(PlantState.DeadSensor, ReturnC + CutOutOverK);
}
