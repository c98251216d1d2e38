using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.OffGrid;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>
/// Chooses panels, charge controller and battery: the cheapest over the years of use that outlast the darkest run of the design winters and
/// are filled again by its darkest month. Where none does, the largest, so that a check can name it.
/// </summary>
/// <param name="site">Winters and years.</param>
/// <param name="load">What is drawn at most.</param>
/// <param name="line">The line of the battery's own voltage.</param>
/// <param name="shelf">Parts.</param>
internal sealed class BatterySizing(OffGridSite site, DayLoad load, LowLine line, PartShelf shelf)
{
    /// <summary>
    /// What the sun must bring in the darkest thirty days for each part that is drawn (from memory of IEEE 1562; own choice).
    /// </summary>
    public const double LeastRefill = 1.1;

    /// <summary>
    /// Largest open voltage of the panels [V]: below it bare parts may be touched in the dry (from memory of IEC 60364-4-41).
    /// </summary>
    public const double MostOpenV = 60;

    /// <summary>Largest voltage while a battery of 24 V is charged [V] (common practice, no source).</summary>
    public const double MostChargeV = 30;

    private const double BankV = SupplyPlan.ControlVolts;

    // More strings of panels would want a fuse each; more of batteries do not share the current evenly (common practice, no source).
    private const int MostStrings = 2;
    private const int MostBatteryStrings = 4;

    // Dirt, age, cells that differ, and the cable (common practice, no source).
    private const double Worn = 0.85;
    private const double PanelCable = 0.97;

    /// <summary>Sizes them.</summary>
    /// <param name="site">Winters and years.</param>
    /// <param name="load">What is drawn at most.</param>
    /// <param name="line">The line of the battery's own voltage.</param>
    /// <param name="needs">Takes what the catalogue lacks.</param>
    /// <returns>The plan without cables and fuse; null where the catalogue lacks panel, controller or battery.</returns>
    public static BatteryPlan? Of(OffGridSite site, DayLoad load, LowLine line, Needs needs)
    {
        var sizing = new BatterySizing(site, load, line, needs.Shelf);
        var fields = sizing.Fields();
        var batteries = needs.Shelf.Of<Battery>();
        if (fields.Count > 0 && batteries.Count > 0)
            return sizing.Cheapest(fields, batteries) ?? sizing.Largest(fields, batteries);
        needs.Pick(null, fields.Count == 0 ? OffGridWords.WantedPanel : OffGridWords.WantedBattery, 1, OffGridPurposes.Battery);
        return null;
    }

    private BatteryPlan? Cheapest(List<Field> fields, IReadOnlyList<Battery> batteries)
    {
        var (best, least) = (default((Field Field, Battery Battery)?), double.PositiveInfinity);
        foreach (var field in fields)
        {
            if (!field.IsBorne || field.Price >= least)
                continue;
            var standing = load.StandingW + field.Controller.OwnW;
            var refillOfOne = site.Winters.LeastRefill(standing, load.DaylightW, 1);
            foreach (var battery in batteries)
            {
                var useful = UsefulW(field, battery);
                var each = OverTheYears(battery) * InSeries(battery);
                if (field.Price + each >= least || refillOfOne * useful < LeastRefill || !BearsCold(battery))
                    continue;
                var strings = StringsFor(field, battery, AmpHours(battery, site.Winters.AtMostWh(standing, load.DaylightW, useful)));
                if (strings <= MostBatteryStrings && field.Price + (strings * each) < least)
                    (best, least) = ((field, battery), field.Price + (strings * each));
            }
        }

        return best is { } found ? Plan(found.Field, found.Battery, 0) : null;
    }

    private BatteryPlan Largest(List<Field> fields, IReadOnlyList<Battery> batteries)
    {
        var field = fields.OrderByDescending(f => f.IsBorne).ThenByDescending(f => f.PeakW).First();
        double Wh(Battery b) => (BearsCold(b) ? 1 : 1e-3) * BankV * b.AmpHours * b.UsableDepth * b.AgedShare;
        return Plan(field, batteries.OrderByDescending(Wh).First(), MostBatteryStrings);
    }

    private BatteryPlan Plan(in Field field, Battery battery, int leastStrings)
    {
        var (standing, useful) = (load.StandingW + field.Controller.OwnW, UsefulW(field, battery));
        var run = site.Winters.Darkest(standing, load.DaylightW, useful);
        var ampHours = AmpHours(battery, run.Wh);
        return new()
        {
            Panel = field.Panel,
            InSeries = field.InSeries,
            Strings = field.Strings,
            Controller = field.Controller,
            Battery = battery,
            BatteriesInSeries = InSeries(battery),
            BatteryStrings = leastStrings > 0 ? leastStrings : (int)StringsFor(field, battery, ampHours),
            TiltDeg = site.Winters.TiltDeg,
            AzimuthDeg = site.Winters.AzimuthDeg,
            ColdOpenV = field.ColdOpenV,
            LowestC = site.Winters.LowestC,
            StandingW = standing,
            DaylightW = load.DaylightW,
            StartA = line.StartA,
            RunningA = line.RunningA,
            RunWinter = run.Winter,
            RunHours = run.Hours,
            RunWh = run.Wh + load.BurstWh,
            NeededAmpHours = ampHours,
            Refill = site.Winters.LeastRefill(standing, load.DaylightW, useful),
        };
    }

    // Power of the panels less every loss until it comes out of the battery; all of it is taken to go through the battery.
    private static double UsefulW(in Field field, Battery battery) =>
        field.PeakW * Worn * PanelCable * field.Controller.Efficiency * battery.ChargeEfficiency;

    private static int InSeries(Battery battery) => (int)Math.Round(BankV / battery.Volts);

    private double AmpHours(Battery battery, double runWh)
    {
        var depth = Math.Min(battery.UsableDepth, 1 - BatterySize.ChargeAgainstFrost(battery.Chemistry, site.Winters.LowestC));
        var cold = BatterySize.ColdFactor(battery.Chemistry, site.Winters.LowestC);
        return depth > 0 ? BatterySize.AmpHours(runWh + load.BurstWh, depth, battery.AgedShare, cold, BankV) : double.PositiveInfinity;
    }

    private double StringsFor(in Field field, Battery battery, double ampHours)
    {
        var currents = Math.Max(field.ChargeA / battery.MostChargeA, line.StartA / battery.MostA);
        return Math.Max(1, Math.Ceiling(Math.Max(ampHours / battery.AmpHours, currents) - 1e-9));
    }

    // It stands in the greenhouse; on the day on which the heat fails that is as cold as outdoors.
    private bool BearsCold(Battery battery) => site.Winters.LowestC >= battery.LeastChargeC && site.Winters.LowestC >= battery.LeastC;

    private List<Field> Fields()
    {
        var fields = new List<Field>();
        foreach (var panel in shelf.Of<SunPanel>())
        {
            var inSeries = (int)Math.Ceiling((MostChargeV / panel.WorkingV) - 1e-9);
            var open = inSeries * BatterySize.OpenV(panel.OpenV, panel.OpenLossPerK, site.Winters.LowestC);
            if (open > MostOpenV)
                continue;
            for (var strings = 1; strings <= MostStrings; strings++)
            {
                var charge = strings * inSeries * panel.Watts / BankV;
                if (Controller(charge, open) is not { } controller)
                    continue;
                var bears = Bears(controller, charge, open);
                var price = OverTheYears(controller) + (strings * inSeries * OverTheYears(panel));
                fields.Add(new(panel, inSeries, strings, controller, open, bears, price));
            }
        }

        return fields;
    }

    private ChargeController? Controller(double chargeA, double openV)
    {
        ChargeController? other = null;
        foreach (var controller in shelf.Of<ChargeController>())
        {
            if (controller.Volts != BankV)
                continue;
            if (Bears(controller, chargeA, openV))
                return controller;
            other ??= controller;
        }

        return other;
    }

    private static bool Bears(ChargeController controller, double chargeA, double openV) =>
        controller.RatedA >= chargeA - 1e-9 && controller.MostV >= openV;

    // What it costs over the years of use, bought again whenever it is worn; without interest.
    private double OverTheYears(IPart part) => (double)shelf.PriceOf(part) * Math.Max(1, Math.Ceiling(site.Years / part.Info.LifeYears));

    private readonly record struct Field(
        SunPanel Panel, int InSeries, int Strings, ChargeController Controller, double ColdOpenV, bool IsBorne, double Price)
    {
        public double PeakW => InSeries * Strings * Panel.Watts;

        public double ChargeA => PeakW / BankV;
    }
}
