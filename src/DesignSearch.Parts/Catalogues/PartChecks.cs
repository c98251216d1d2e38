using DesignSearch.Files;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Parts.Catalogues;

/// <summary>Rules between the cells of one row.</summary>
internal static class PartChecks
{
    public static void Check(CsvEntry<IPart> entry, FaultList faults)
    {
        var info = entry.Value.Info;
        Require(info.PriceLow <= info.Price, "price_low", "at most the usual price of the row");
        Require(info.PriceHigh >= info.Price, "price_high", "at least the usual price of the row");
        switch (entry.Value)
        {
            case Collector c:
                Require(Math.Abs((c.WidthM * c.HeightM) - c.AreaM2) <= 0.1 * c.AreaM2, "area_m2", "width_m times height_m, within a tenth");
                break;
            case CollectorMount m:
                var isFixed = m.Turning == TurningKind.Fixed;
                Require(isFixed == (m.Axis == TurningAxis.None), "axis", "none for a fixed mount, vertical or sloping for one that turns");
                Require(isFixed == (m.LimitAngleDeg == 0), "limit_angle_deg", "0 for a fixed mount, more for one that turns");
                Require(isFixed || m.WorkingWindMPerS > 0, "working_wind_m_per_s", "more than 0 for a mount that turns");
                Require(!isFixed || !m.NeedsDrive, "needs_drive", "no for a fixed mount");
                Require(m.WorkingWindMPerS <= m.HoldsWindMPerS, "working_wind_m_per_s", "at most the wind that the mount holds");
                break;
            case Pipe p:
                Require(p.BoreMm < p.OuterMm, "bore_mm", "less than outer_mm");
                break;
            case CompostCoil p:
                Require(p.BoreMm < p.OuterMm, "bore_mm", "less than outer_mm");
                break;
            case Bench b:
                Require(b.WattsPerM2 > 0 == b.Volts > 0, "volts", "0 for fleece alone, the supply's for a heated bench");
                break;
            case PipeInsulation i:
                Require(i.InnerFromMm <= i.InnerToMm, "inner_from_mm", "at most inner_to_mm");
                break;
            case Cable c:
                Require(CopperResistance.IsListed(c.SectionMm2, c.ConductorClass), "section_mm2", "a cross-section that IEC 60228 lists for class 1, 2 or 5: 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16 or 25");
                break;
            case HeatRelease r:
                Require((r.FanWatts > 0) == (r.Form == ReleaseForm.FanCoil), "fan_watts", "more than 0 for a fan-coil, 0 for the others");
                Require((r.Unit == PartUnit.Metre) == (r.Form == ReleaseForm.BarePipe), "unit", "m for a bare-pipe, piece for the others");
                break;
            case FreezeProtection f:
                Require((f.FluidLPerM2 > 0) == (f.Method == FreezeMethod.Antifreeze), "fluid_l_per_m2", "more than 0 for antifreeze, 0 for the others");
                Require(f.Method == FreezeMethod.Antifreeze || f.ExchangerEffectiveness == 1, "exchanger_effectiveness", "1 where there is no exchanger");
                break;
        }

        void Require(bool isMet, string column, string expected)
        {
            if (isMet)
                return;
            var (line, at) = entry.PlaceOf(column);
            faults.Add(entry.File, line, at, "", $"{column}: {expected} (part {info.Id})");
        }
    }
}
