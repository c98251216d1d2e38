using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>Works a supply without mains out: each low voltage, then battery, charge controller and panels.</summary>
internal static class OffGridSizing
{
    /// <summary>Works it out.</summary>
    /// <param name="key">All on which it depends.</param>
    /// <param name="needs">An empty list, filled with what it needs.</param>
    public static PlannedSupply Plan(SupplyKey key, Needs needs)
    {
        List<Circuit> signals = [.. key.Circuits.Where(c => c.Volts == 0).Select(c => SupplySizing.Signal(c, needs))];
        List<Circuit> unfed = [.. key.Circuits.Where(c => c.Volts >= SupplyPlan.MainsVolts)];
        var low = key.Circuits.Where(c => c.Volts is > 0 and < SupplyPlan.MainsVolts).ToList();
        var lines = low.Where(c => c.Volts != SupplyPlan.ControlVolts).GroupBy(c => c.Volts).OrderBy(g => g.Key)
            .Select(g => LineSizing.Of(key, g.Key, [.. g], SupplySpot.Battery, needs)).ToList();
        var load = DayLoad.Of(low, lines);
        List<Circuit> own = [.. low.Where(c => c.Volts == SupplyPlan.ControlVolts), .. lines.Select(Input)];
        BatteryPlan? battery = null;
        if (own.Count > 0)
        {
            var line = LineSizing.OfBattery(key, own, needs);
            lines = [.. lines.Append(line).OrderBy(l => l.Volts)];
            SupplySizing.ListBox(key, lines, [.. low, .. signals], needs);
            var site = key.OffGrid!;
            battery = BatterySizing.Of(site, load, line, needs) is { } sized ? OffGridListing.List(sized, site, needs) : null;
        }

        var plan = new SupplyPlan
        {
            MainsW = 0,
            MainsCircuits = [],
            MainsCable = null,
            MainsCableM = 0,
            Breaker = null,
            Lines = lines,
            Signals = signals,
            Battery = battery,
            Unfed = unfed,
            DwellingA = 0,
            DwellingStartA = 0,
        };
        return new(plan, needs);
    }

    // What a line draws from the battery through its converter.
    private static Circuit Input(LowLine line)
    {
        var efficiency = line.Supply?.Efficiency ?? 1;
        return new(SupplyWords.SupplyOf(line.Volts), SupplyPlan.ControlVolts, line.Watts / efficiency, 0, SupplyWords.AlwaysOn, "")
        {
            StartA = line.StartA * line.Volts / efficiency / SupplyPlan.ControlVolts,
        };
    }
}
