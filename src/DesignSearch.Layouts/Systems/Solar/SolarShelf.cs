using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What a solar plant looks for in a catalogue, sorted once, and the flows that were worked out.</summary>
/// <param name="shelf">The parts of the catalogue.</param>
internal sealed class SolarShelf(PartShelf shelf)
{
    private const int MostFlows = 16384;

    // A hair narrower than the long pipe is no harm over so short a way (estimate, no source).
    private const double LeastBoreShare = 0.75;

    // A corrugated pipe keeps water in its folds and never drains quite empty.
    private const double CorrugatedUm = 50;

    private const double LPerMinOfM3PerS = 60_000;

    // The solar controller watches collector, tank's bottom and tank's top.
    private const int SensorsOfController = 3;

    private readonly Pipe[] metalPipes = [.. shelf.Of<Pipe>().Where(p => p.IsMetal && p.IsOutdoor)];

    // With the wrap that one wants which bears neither sun nor rain.
    private readonly PipeInsulation[] insulations =
    [
        .. shelf.Of<PipeInsulation>()
            .OrderBy(i => shelf.PriceOf(i) + (i.IsOutdoor || shelf.Cheapest(SmallPartRole.SunWrap) is not { } wrap ? 0 : shelf.PriceOf(wrap))),
    ];

    // The thriftiest first, of these the cheapest: a cheap strong one would want a larger supply and thicker cables.
    private readonly Pump[] pumps = [.. shelf.Of<Pump>().OrderBy(p => p.Watts)];
    private readonly Holdfast[] holdfasts = [.. shelf.Of<Holdfast>()];
    private readonly Antifreeze[] fluids = [.. shelf.Of<Antifreeze>()];
    private readonly ReliefValve[] reliefs = [.. shelf.Of<ReliefValve>()];
    private readonly ExpansionVessel[] vessels = [.. shelf.Of<ExpansionVessel>()];
    private readonly SolarController[] controllers = [.. shelf.Of<SolarController>()];
    private readonly Memory<FlowKey, LoopFlow> flows = new(MostFlows);

    /// <summary>The shelf of a catalogue, made once.</summary>
    public static SolarShelf Of(PartShelf parts) => parts.Once(p => new SolarShelf(p));

    /// <summary>The cheapest pipe for the first metres from a collector that may stand dry; null where none serves.</summary>
    /// <param name="bearsC">Heat that it must bear [°C].</param>
    /// <param name="longPipe">The pipe that it goes on from.</param>
    /// <param name="protection">Whether it must run empty by itself, and the bore that it needs for it.</param>
    public Pipe? FirstMetres(double bearsC, Pipe longPipe, FreezeProtection protection)
    {
        foreach (var pipe in metalPipes)
        {
            var drains = protection.Method == FreezeMethod.Antifreeze || (!HoldsWater(pipe) && pipe.BoreMm >= protection.MinBoreMm);
            if (drains && pipe.MaxTemperatureC >= bearsC && pipe.BoreMm >= longPipe.BoreMm * LeastBoreShare)
                return pipe;
        }

        return null;
    }

    /// <summary>The cheapest sleeve, with its wrap, that fits a pipe and bears its heat; null where none does.</summary>
    /// <param name="bearsC">Heat that it must bear [°C].</param>
    /// <param name="pipe">The pipe.</param>
    public PipeInsulation? Sleeve(double bearsC, Pipe pipe)
    {
        foreach (var sleeve in insulations)
        {
            if (sleeve.MaxTemperatureC >= bearsC && pipe.OuterMm >= sleeve.InnerFromMm && pipe.OuterMm <= sleeve.InnerToMm)
                return sleeve;
        }

        return null;
    }

    /// <summary>Whether its folds keep water, so that it never drains quite empty.</summary>
    /// <param name="pipe">The pipe.</param>
    public static bool HoldsWater(Pipe pipe) => pipe.RoughnessUm >= CorrugatedUm;

    /// <summary>The cheapest antifreeze that stays free of ice; null where none does.</summary>
    /// <param name="coldC">Down to here [°C].</param>
    public Antifreeze? Fluid(double coldC)
    {
        foreach (var fluid in fluids)
        {
            if (fluid.FreezesC <= coldC)
                return fluid;
        }

        return null;
    }

    /// <summary>
    /// The cheapest relief valve that opens before what it protects bursts; the one that opens first where none does; null without any.
    /// </summary>
    /// <param name="bearsBar">What bears least of all that it protects [bar].</param>
    public ReliefValve? Relief(double bearsBar)
    {
        ReliefValve? first = null;
        foreach (var valve in reliefs)
        {
            if (valve.OpensAtBar <= bearsBar)
                return valve;
            if (first is null || valve.OpensAtBar < first.OpensAtBar)
                first = valve;
        }

        return first;
    }

    /// <summary>The expansion vessels, all of one size, that cost least; none where the catalogue has none.</summary>
    /// <param name="litres">What they must hold together [L].</param>
    /// <param name="bearsBar">Pressure that each must stand [bar].</param>
    public (ExpansionVessel? Vessel, int Count) Vessels(double litres, double bearsBar)
    {
        var (best, many, least) = (default(ExpansionVessel), 0, decimal.MaxValue);
        foreach (var vessel in vessels)
        {
            var count = (int)Math.Ceiling((litres / vessel.Litres) - 1e-9);
            var price = shelf.PriceOf(vessel) * count;
            if (vessel.MaxBar >= bearsBar && price < least)
                (best, many, least) = (vessel, count, price);
        }

        return (best, many);
    }

    /// <summary>
    /// The cheapest controller that has its three sensors and can hold the pump back as wanted; one whose contact is too weak for the pump
    /// only where none is strong enough, so that a check can name it; null where none can hold it back.
    /// </summary>
    /// <param name="volts">Its voltage [V].</param>
    /// <param name="amperes">What it switches while the pump starts [A].</param>
    /// <param name="lockOutC">Collector above which it may not start the pump [°C]; null where it may always.</param>
    public SolarController? Controller(double volts, double amperes, double lockOutC)
    {
        SolarController? weak = null;
        foreach (var controller in controllers)
        {
            var holdsBack = controller.LockOutFromC <= lockOutC && lockOutC <= controller.LockOutToC;
            if (!holdsBack || controller.Volts != volts || controller.Sensors < SensorsOfController)
                continue;
            if (controller.RatedA >= amperes)
                return controller;
            weak ??= controller;
        }

        return weak;
    }

    /// <summary>The thriftiest pump that is strong enough; null where none is.</summary>
    /// <param name="flowLPerMin">Flow that it must reach [L/min].</param>
    /// <param name="dropPa">Pressure lost at that flow, which it must overcome [Pa].</param>
    /// <param name="bearsC">Water that it must bear [°C].</param>
    /// <param name="volts">Its voltage [V].</param>
    public Pump? Pump(double flowLPerMin, double dropPa, double bearsC, double volts)
    {
        foreach (var pump in pumps)
        {
            if (PumpCurve.Of(pump).HeadPa(flowLPerMin / LPerMinOfM3PerS) >= dropPa && pump.MaxTemperatureC >= bearsC && pump.Volts == volts)
                return pump;
        }

        return null;
    }

    /// <summary>Whether there is a relay that counts hours from dawn.</summary>
    public bool HasDelayRelay { get; } = shelf.Cheapest(SmallPartRole.DelayRelay, SupplyPlan.ControlVolts) is not null;

    /// <summary>What anchors and their concrete cost, counted as the bill counts: what is cheaper here is cheaper there.</summary>
    /// <param name="anchor">The anchor.</param>
    /// <param name="count">How many.</param>
    /// <param name="concreteM3">Concrete [m³].</param>
    public decimal PriceOf(Holdfast anchor, double count, double concreteM3)
    {
        var anchors = Pricing.Total(Needs.Bought(anchor, count), 0, shelf.PriceOf(anchor));
        return concreteM3 > 0 && shelf.Cheapest(SmallPartRole.Cement) is { } cement
            ? anchors + Pricing.Total(Needs.Bought(cement, concreteM3), 0, shelf.PriceOf(cement))
            : anchors;
    }

    /// <summary>The cheapest anchor of a form that stands a pull; null where none does.</summary>
    /// <param name="form">What it is.</param>
    /// <param name="pullN">Pull [N].</param>
    /// <param name="testedN">What one stood when it was tested on the spot [N]; null where the catalogue's figure counts.</param>
    /// <param name="depthM">How deep it must reach [m].</param>
    public Holdfast? Anchor(HoldfastForm form, double pullN, double? testedN, double depthM)
    {
        foreach (var one in holdfasts)
        {
            if (one.Form == form && (testedN ?? one.HoldsN) >= pullN && one.LengthM >= depthM)
                return one;
        }

        return null;
    }

    /// <summary>The strongest of a form; null where there is none.</summary>
    /// <param name="form">What it is.</param>
    public Holdfast? Strongest(HoldfastForm form)
    {
        Holdfast? strongest = null;
        foreach (var one in holdfasts)
        {
            if (one.Form == form && one.HoldsN > (strongest?.HoldsN ?? 0))
                strongest = one;
        }

        return strongest;
    }

    /// <summary>The cheapest stops or bolt that hold a moment about the axis; null where none does.</summary>
    /// <param name="form">What it is.</param>
    /// <param name="momentNm">Moment [N·m].</param>
    /// <param name="volts">Voltage that must fit [V]; 0 where it has none.</param>
    public Holdfast? Lock(HoldfastForm form, double momentNm, double volts)
    {
        foreach (var one in holdfasts)
        {
            if (one.Form == form && one.HoldsNm >= momentNm && one.Volts == volts)
                return one;
        }

        return null;
    }

    /// <summary>What <see cref="LoopFlow.Settle"/> says, worked out once for each loop.</summary>
    /// <inheritdoc cref="LoopFlow.Settle"/>
    public LoopFlow Flow(
        Collector collector, int count, Pump pump, Pipe pipe, double lengthM, double liftM, double wantedKgPerSM2) => flows.Of(
        new(collector.Id, count, pump.Id, pipe.Id, lengthM, liftM, wantedKgPerSM2),
        _ => LoopFlow.Settle(collector, count, pump, pipe, lengthM, liftM, wantedKgPerSM2));

    private readonly record struct FlowKey(
        string Collector, int Count, string Pump, string Pipe, double LengthM, double LiftM, double WantedKgPerSM2);
}
