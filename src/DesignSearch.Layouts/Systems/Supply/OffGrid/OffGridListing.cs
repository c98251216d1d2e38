using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.OffGrid;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>Lists panels, charge controller and battery with all that joins, holds and protects them.</summary>
internal static class OffGridListing
{
    // In from the panels and from the battery.
    private const int Glands = 2;

    private const double PanelDrop = 0.03;

    // A fuse of this kind melts at 1.6 times its size, from 16 A up; the cable may have 1.45 times what it bears: IEC 60364-4-43, 433.1.
    private const double CableShare = 1.6 / 1.45;

    // Lower edge of the panels above the ground (own choice) [m].
    private const double ClearanceM = 1;

    /// <summary>Lists it.</summary>
    /// <param name="plan">The plan without cables and fuse.</param>
    /// <param name="site">The storm.</param>
    /// <param name="needs">The list.</param>
    /// <returns>The plan with them.</returns>
    public static BatteryPlan List(BatteryPlan plan, OffGridSite site, Needs needs)
    {
        Panels(plan, site, needs);
        var charge = Duty.Current(PlantState.Running, plan.ChargeA);
        var open = Duty.Voltage(PlantState.DesignNight, plan.ColdOpenV);
        needs.Add(plan.Controller, 1, OffGridPurposes.Controller, charge, open);
        var start = Duty.Current(PlantState.Running, plan.StartA / plan.BatteryStrings);
        needs.Add(plan.Battery, plan.Batteries, OffGridPurposes.Battery, start);
        needs.Small(SmallPartRole.BatteryBox, plan.Batteries, OffGridPurposes.BatteryBox, [SupplySizing.UnderGlass]);
        var together = Duty.Current(PlantState.Running, plan.StartA);
        needs.Small(SmallPartRole.LowVoltageDisconnect, 1, OffGridPurposes.Guard, [together], SupplyPlan.ControlVolts);
        needs.Small(SmallPartRole.Gland, Glands, OffGridPurposes.Gland);
        return Cables(Fused(plan, needs), needs);
    }

    private static void Panels(BatteryPlan plan, OffGridSite site, Needs needs)
    {
        var side = Math.Sqrt(plan.Panel.AreaM2);
        var wind = PlateWind.Of(plan.TiltDeg, side, side, ClearanceM).Worst;
        var gale = Duty.Force(PlantState.Gale, WindForce.ForceN(site.StormPa, plan.Panel.AreaM2, wind));
        var bracket = Bearing(needs.Shelf.Of<PanelBracket>(), gale);
        needs.Add(plan.Panel, plan.Panels, OffGridPurposes.Panel);
        needs.Pick(bracket, OffGridWords.WantedBracket, plan.Panels, OffGridPurposes.Bracket, gale);
        var shortA = Duty.Current(PlantState.Running, plan.PanelsShortA);
        var open = Duty.Voltage(PlantState.DesignNight, plan.ColdOpenV);
        needs.Small(SmallPartRole.PanelSwitch, 1, OffGridPurposes.PanelSwitch, [shortA, open]);
    }

    // At the battery, and one that breaks the current of a dead short across all of it.
    private static BatteryPlan Fused(BatteryPlan plan, Needs needs)
    {
        Duty[] duties =
        [
            Duty.Current(PlantState.Running, plan.FuseA),
            Duty.Voltage(PlantState.Running, BatterySizing.MostChargeV),
            Duty.Breaking(PlantState.Running, plan.BatteryStrings * plan.Battery.ShortA),
        ];
        var fuse = Bearing(needs.Shelf.Of<BatteryFuse>(), duties);
        needs.Pick(fuse, OffGridWords.WantedFuse(plan.FuseA), 1, OffGridPurposes.Fuse(fuse?.RatedA ?? 0), duties);
        return plan with { Fuse = fuse };
    }

    // The cheapest that bears what it meets; where none does the cheapest, so that a check can name it.
    private static T? Bearing<T>(IReadOnlyList<T> cheapestFirst, params Duty[] duties)
        where T : class, IPart =>
        cheapestFirst.FirstOrDefault(p => duties.All(d => d.Margin(p) >= 0)) ?? (cheapestFirst.Count > 0 ? cheapestFirst[0] : null);

    private static BatteryPlan Cables(BatteryPlan plan, Needs needs)
    {
        var cables = SupplyShelf.Of(needs.Shelf).LowCables;
        var (working, amperes) = (plan.InSeries * plan.Panel.WorkingV, plan.Strings * plan.Panel.ShortA);
        var roof = cables.FirstOrDefault(c => c.Cable.RatedA >= plan.PanelsShortA
            && c.Cable.MaxVolts >= plan.ColdOpenV
            && CableDrop.Volts(BatteryPlan.PanelCableM, amperes, c.OhmPerM) <= PanelDrop * working)?.Cable;
        var fusedA = (plan.Fuse?.RatedA ?? 0) * CableShare;
        var thick = cables.FirstOrDefault(c => c.Cable.RatedA >= fusedA)?.Cable;
        var current = Duty.Current(PlantState.Running, plan.PanelsShortA);
        var metres = BatteryPlan.PanelCableM * NeededPart.Cuts;
        needs.Pick(roof, OffGridWords.WantedPanelCable(plan), metres, OffGridPurposes.PanelCable, current);
        var fused = Duty.Current(PlantState.Running, fusedA);
        metres = plan.BatteryCableM * NeededPart.Cuts;
        needs.Pick(thick, OffGridWords.WantedBatteryCable(fusedA), metres, OffGridPurposes.BatteryCable, fused);
        return plan with { PanelCable = roof, BatteryCable = thick };
    }
}
