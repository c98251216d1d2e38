using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>Checks of supply, cables and fuses. Rated currents of the catalogue are orders of magnitude; a licensed person decides.</summary>
internal static class SupplyChecks
{
    private const string Copper = "Resistance after IEC 60228; ";

    public static IEnumerable<Check> Of(Scenario scenario, BuiltLayout built, SupplyPlan supply)
    {
        if (supply.Lines.Count > 0)
        {
            // Of several low voltages the tightest is told.
            yield return Worst(supply, l => l.Feeder is null ? double.NaN : l.WorstDrop, CableDrop.UsualLimit, "cable-drop", "voltage lost in the low-voltage cables", l => $"At {l.Volts:0} V the worst placed device loses {100 * l.WorstDrop:0.0} of at most 5 % of its voltage over {l.FeederM:0} m of {l.Feeder?.SectionMm2 ?? 0:0.##} mm² and its own cable.", Copper + "5 % is common practice, no source");
            yield return Worst(supply, l => l.Feeder is null ? double.NaN : l.WorstStartDrop, CableChooser.LargestStartDrop, "start-drop", "voltage lost while a motor starts", l => $"At {l.Volts:0} V a starting motor loses {100 * l.WorstStartDrop:0} of at most 20 % of its voltage.", Copper + "20 % is common practice, no source");
            yield return Worst(supply, l => l.Feeder is null ? double.NaN : l.RunningA / l.CablesBearA, 1, "cable-fuse", "fuse between load and cable", l => $"At {l.Volts:0} V everything together draws {l.RunningA:0.0} A, {(l.FuseA is { } f ? FormattableString.Invariant($"the fuse is {f:0.#} A") : "no fuse size fits")}, the thinnest cable bears {l.CablesBearA:0} A.", "Load ≤ fuse ≤ cable rating, the local code decides", l => l.FuseA is not null);
            yield return Worst(supply, l => l.Supply is null ? double.NaN : l.Watts / l.Supply.Watts, 1, "supply-power", "power of the low-voltage supply", l => $"Everything at {l.Volts:0} V draws {l.Watts:0} W; the supply gives {l.Supply?.Watts ?? 0:0} W.", "Sum of the catalogue's figures");
            yield return Worst(supply, l => l.Supply is null ? double.NaN : l.StartA * l.Volts / l.Supply.Watts, 1, "start-current", "current while a motor starts", l => $"While the hungriest device at {l.Volts:0} V starts, {l.StartA:0.0} A are drawn; the supply gives {(l.Supply?.Watts ?? 0) / l.Volts:0.0} A. Motors start one after the other.", "The catalogue's starting currents; pumps three times their running current, common practice, no source");
            var touch = supply.Lines.Max(l => l.Volts);
            var boxes = supply.MainsW > 0 ? 2 : 1;
            var has = built.Parts.Where(p => p.Part is SmallPart { Role: SmallPartRole.ControlBox }).Sum(p => p.Quantity);
            yield return Check.Of("voltages-apart", "low voltage kept low and apart", ExtraLowVoltage.Includes(touch, false) && has >= boxes, 1 - touch / ExtraLowVoltage.DirectV, $"The highest low voltage is {touch:0} V, {(boxes == 2 ? "in a box and ducts apart from the mains" : "and no mains stands in the greenhouse")}.", "Extra-low voltage after the IEC vocabulary, 120 V direct current; local rules for wet places are stricter");
        }

        if (scenario.Site.MainsLimitA is { } limit)
            yield return Check.Of("mains-current", "current that the dwelling can spare", supply.DwellingStartA <= limit, 1 - supply.DwellingStartA / limit, $"Heater and everything else draw {supply.DwellingA:0.0} A of the dwelling's mains, {supply.DwellingStartA:0.0} A while a motor starts; it can spare {limit:0.#} A.", "Sum of the catalogue's figures at 230 V; the builder's own limit");
    }

    // The share of a limit on each line; a line that lacks a part altogether fails another check, and is left out here.
    private static Check Worst(SupplyPlan supply, Func<LowLine, double> share, double limit, string id, string title, Func<LowLine, FormattableString> sentence, string source, Func<LowLine, bool>? holds = null)
    {
        LowLine? worst = null;
        var (most, held) = (double.NaN, true);
        foreach (var line in supply.Lines)
        {
            var (used, holding) = (share(line) / limit, holds?.Invoke(line) ?? true);
            // A line that does not hold is worse than any that does.
            if (!double.IsNaN(used) && (worst is null || (held && !holding) || (held == holding && used > most)))
                (worst, most, held) = (line, used, holding);
        }

        if (worst is null)
            return new Check(id, title, true, 0, "The catalogue lacks a part for it; see there.", source);
        var passed = most <= 1 + 1e-9 && held;
        return Check.Of(id, title, passed, passed ? 1 - most : Math.Min(1 - most, -1e-3), sentence(worst), source);
    }
}
