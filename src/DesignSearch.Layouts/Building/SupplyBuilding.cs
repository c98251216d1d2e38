using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>Mains and extra-low voltage: what must be brought to the greenhouse for what is chosen.</summary>
internal static class SupplyBuilding
{
    private const string System = "electrics";
    private const double MainsVolts = 230;
    private const double ShortCableM = 5;
    private const double SpareLoad = 1.25;
    private const double LargestDrop = 0.05;
    private const double SmallLoadW = 8;

    public static SupplyPlan? Build(Scenario scenario, SolarLoop? solar, Heater? heater, Pump? heapPump, bool movesCover, Needs needs)
    {
        var mains = heater?.Watts ?? 0;
        var low = new SortedDictionary<double, double>();
        void Load(double volts, double watts)
        {
            if (volts is > 0 and < MainsVolts)
                low[volts] = low.GetValueOrDefault(volts) + watts;
            else if (volts >= MainsVolts)
                mains += watts;
        }

        if (solar is not null)
        {
            Load(solar.Pump.Volts, solar.Pump.Watts);
            Load(solar.ReleasePump?.Volts ?? 0, solar.ReleasePump?.Watts ?? 0);
            Load(solar.Release.Volts, solar.Release.FanWatts * (solar.Release.Unit == PartUnit.Metre ? 1 : solar.ReleaseCount));
            Load(solar.Protection.Volts, solar.Protection.Watts);
            Load(solar.Drive?.Volts ?? 0, (solar.Drive?.Watts ?? 0) * solar.Frames);
            Load(24, SmallLoadW);
        }

        Load(heapPump?.Volts ?? 0, heapPump?.Watts ?? 0);
        if (movesCover)
            Load(24, needs.Catalogue.SmallParts.Where(p => p.Role == SmallPartRole.CoverMotor).Select(p => p.Watts).DefaultIfEmpty(0).Min() * 2);
        if (mains == 0 && low.Count == 0)
            return null;

        // Where only low voltage is needed, it is brought from the dwelling or made beside the greenhouse from mains brought there: whichever costs less.
        if (mains > 0 || scenario.Site.MainsAtGreenhouse)
            return Plan(scenario, mains, low, true, heater, needs);
        var (far, near) = (new Needs(needs.Catalogue), new Needs(needs.Catalogue));
        var (farPlan, nearPlan) = (Plan(scenario, 0, low, false, heater, far), Plan(scenario, low.Values.Sum(), low, true, heater, near));
        var takesFar = (far.Missing.Count, far.Price) is var f && (near.Missing.Count, near.Price) is var n && f.CompareTo(n) <= 0;
        needs.AddAll(takesFar ? far : near);
        return takesFar ? farPlan : nearPlan;
    }

    private static SupplyPlan Plan(Scenario scenario, double mains, SortedDictionary<double, double> low, bool mainsInHouse, Heater? heater, Needs needs)
    {
        var mainsCable = mains > 0 ? Mains(scenario, mains, scenario.Site.MainsAtGreenhouse, heater, needs) : null;
        var (supplies, cable, length, drop) = Low(scenario, low, mainsInHouse, needs);
        return new SupplyPlan(mains, mainsCable, low.Values.Sum(), low.Count > 0 ? low.Keys.Max() : 0, supplies, cable, length, drop);
    }

    private static Cable? Mains(Scenario scenario, double watts, bool hasMains, Heater? heater, Needs needs)
    {
        var amperes = watts / MainsVolts;
        var metres = hasMains ? ShortCableM : scenario.Site.MainsCableM;
        var cable = needs.Catalogue.Cables
            .Where(c => c.MaxVolts >= 400 && c.IsOutdoor && c.RatedA >= amperes && CableDrop.Volts(c, metres, amperes) <= LargestDrop * MainsVolts)
            .OrderBy(c => c.Price).ThenBy(c => c.Id, StringComparer.Ordinal).FirstOrDefault();
        needs.Pick(cable, FormattableString.Invariant($"a mains cable for {amperes:0.0} A over {metres:0} m"), metres * HouseBuilding.Cuts, System, "Brings the mains; a licensed person lays and joins it.", hasMains ? "inside the greenhouse" : "in a duct from the dwelling to the greenhouse");
        if (!hasMains)
            needs.Small(SmallPartRole.Conduit, metres, System, "Protects the mains cable in the ground.", "from the dwelling to the greenhouse");
        needs.Small(SmallPartRole.ResidualCurrentDevice, 1, System, "Cuts the mains on a small fault current; in a wet place it is what saves a life.", "in the mains box");
        needs.Small(SmallPartRole.ControlBox, 1, System, "Keeps water off the mains, apart from the low voltage.", "inside by the door, above splashes", MainsVolts);
        needs.Small(SmallPartRole.Gland, 3, System, "Seals each cable into its box.", "under the mains box");
        if (heater is { HasThermostat: false })
            needs.Small(SmallPartRole.Thermostat, 1, "stand-by heater", "Starts the heater when the air falls to its setting.", "at plant height, out of the sun", MainsVolts);
        return hasMains ? null : cable;
    }

    private static (List<PowerSupply> Supplies, Cable? Cable, double LengthM, double DropV) Low(Scenario scenario, SortedDictionary<double, double> loads, bool mainsInHouse, Needs needs)
    {
        var supplies = new List<PowerSupply>();
        if (loads.Count == 0)
            return (supplies, null, 0, 0);
        foreach (var (volts, watts) in loads)
        {
            var supply = needs.Catalogue.Supplies.Where(s => s.Volts == volts && !s.IsBattery && s.Watts >= watts * SpareLoad).OrderBy(s => s.Price).ThenBy(s => s.Id, StringComparer.Ordinal).FirstOrDefault();
            needs.Pick(supply, FormattableString.Invariant($"a supply of {volts:0} V for {watts * SpareLoad:0} W"), 1, System, "Makes the safe low voltage for pumps, valves and drive.", mainsInHouse ? "in a box of its own beside the mains box" : "in the dwelling, beside the fuse board");
            if (supply is not null)
                supplies.Add(supply);
        }

        // Where the greenhouse has no mains, the low voltage itself is brought from the dwelling.
        var length = mainsInHouse ? ShortCableM : scenario.Site.MainsCableM;
        Cable? thickest = null;
        var worst = 0.0;
        foreach (var (volts, watts) in loads)
        {
            var amperes = watts / volts;
            var cable = needs.Catalogue.Cables.Where(c => c.IsOutdoor && c.MaxVolts < 400 && c.RatedA >= amperes && CableDrop.Volts(c, length, amperes) <= LargestDrop * volts).OrderBy(c => c.Price).ThenBy(c => c.Id, StringComparer.Ordinal).FirstOrDefault();
            needs.Pick(cable, FormattableString.Invariant($"a cable for {amperes:0.0} A at {volts:0} V over {length:0} m with at most 5 % drop"), length * HouseBuilding.Cuts, System, "Brings the low voltage without losing more than a twentieth of it.", mainsInHouse ? "inside the greenhouse" : "from the dwelling to the greenhouse, in a duct apart from any mains");
            if (cable is null)
                continue;
            worst = Math.Max(worst, CableDrop.Volts(cable, length, amperes));
            thickest = thickest is null || cable.SectionMm2 > thickest.SectionMm2 ? cable : thickest;
        }

        needs.Small(SmallPartRole.Fuse, loads.Count, System, "Protects the cable; never above the cable's rating.", "right behind the supply");
        needs.Small(SmallPartRole.ControlBox, 1, System, "Keeps controls dry, apart from any mains.", "inside by the door, above splashes", 24);
        needs.Small(SmallPartRole.Gland, 4, System, "Seals each cable into its box.", "under the control box");
        return (supplies, thickest, length, worst);
    }
}
