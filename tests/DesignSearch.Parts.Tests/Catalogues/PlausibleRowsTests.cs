using DesignSearch.Files;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.DayStore;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Skin;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>The rows of the starter catalogue against published bands, so that an invented part is at least a possible one.</summary>
public sealed class PlausibleRowsTests
{
    private static readonly Catalogue Starter = Load();

    [Theory]
    [InlineData("flat-plate-2m2", 3.51, 4.25)]
    [InlineData("flat-plate-2m5", 3.51, 4.25)]
    public void Selective_flat_plates_lie_near_a_public_certificate(string id, double low, double high)
    {
        var collector = Find<Collector>(id);
        Validation.Within("part collector " + id + " eta0", "peak efficiency, gross [1]", 0.72, 0.795, collector.Eta0Beam, "public certificate of 2022 (gross 0.739) and a maker's data sheet (aperture 0.795)", "catalogs/starter/collectors.csv");
        Validation.Within("part collector " + id + " a1", "heat loss term [W/(m2 K)]", low, high, collector.A1WPerM2K, "public certificate of 2022 (3.51) and Koffi et al. 2014 (4.25)", "catalogs/starter/collectors.csv");
    }

    [Fact]
    public void Twin_wall_absorber_is_no_better_than_measured()
    {
        var collector = Find<Collector>("box-twinwall-2m");
        const string Source = "Pugsley et al. 2019, Renewable Energy 137, 2-9: twin-wall polycarbonate absorber under one pane";
        Validation.Within("part collector twin-wall eta0", "peak efficiency [1]", 0.5, 0.62, collector.Eta0Beam, Source, "catalogs/starter/collectors.csv");
        Validation.Within("part collector twin-wall a1", "heat loss term [W/(m2 K)]", 6, 8, collector.A1WPerM2K, Source, "catalogs/starter/collectors.csv");
    }

    // A safety figure must never be below what the efficiency line alone says; measured stagnation lies above it.
    [Fact]
    public void Stagnation_is_no_lower_than_the_efficiency_line_says() =>
        Assert.All(Starter.Of<Collector>(), c =>
        {
            var gain = c.Eta0Beam * (0.85 + (0.15 * c.DiffuseModifier)) * 1000;
            var loss = c.A1WPerM2K + c.WindLossJPerM3K;
            var rise = c.A2WPerM2K2 == 0 ? gain / loss : (-loss + Math.Sqrt((loss * loss) + (4 * c.A2WPerM2K2 * gain))) / (2 * c.A2WPerM2K2);
            Assert.True(c.StagnationC >= 30 + rise, FormattableString.Invariant($"{c.Id}: {c.StagnationC} below {30 + rise:0}"));
        });

    [Fact]
    public void Polyethylene_on_glazed_collectors_is_too_cool_for_stagnation() =>
        Assert.All(Starter.Of<Pipe>().Where(p => !p.IsMetal), p => Assert.All(Starter.Of<Collector>().Where(c => c.IsGlazed), c => Assert.True(p.MaxTemperatureC < c.StagnationC, p.Id + " " + c.Id)));

    [Fact]
    public void Foam_conducts_no_more_than_its_standards_allow() =>
        Assert.All(Starter.Of<PipeInsulation>(), i => Validation.Within("part insulation " + i.Id, "declared conductivity [W/(m K)]", 0.025, 0.050, i.ConductivityWPerMK, "EN 14304 and EN 14313, scope: at most 0.050 W/(m K) at 10 C", "catalogs/starter/pipe-insulations.csv"));

    // A sheet of 6 mm has about 0.11 m²K/W of its own (3.5 W/(m²K) less its films); an air gap adds 0.15 to 0.18.
    [Theory]
    [InlineData("north-board-50", 0.55, 0.9)]
    [InlineData("twinwall-lining-6", 2.0, 2.8)]
    public void Linings_bring_a_single_pane_to_a_known_value(string id, double low, double high)
    {
        var u = 1 / ((1 / 5.75) + Find<Lining>(id).ResistanceM2KPerW);
        Assert.InRange(u, low, high);
    }

    [Fact]
    public void Bubble_lining_keeps_to_the_cautious_band() =>
        Validation.Within("part lining bubble", "glass with bubble film [W/(m2 K)]", 3.2, 4.2, 1 / ((1 / 5.75) + Find<Lining>("bubble-lining-large").ResistanceM2KPerW), "EN 673 form of single glass 5.75; trade band for bubble film, sellers' claims left out", "catalogs/starter/linings.csv");

    [Fact]
    public void Screens_save_what_growers_measured()
    {
        // Share of the loss that is saved while closed, over single glass, the bare edge counted.
        foreach (var cover in Starter.Of<NightCover>())
        {
            var closed = 1 / ((1 / 5.75) + cover.ResistanceM2KPerW);
            var saved = (1 - cover.EdgeLeak) * (1 - (closed / 5.75));
            Validation.Within("part night-cover " + cover.Id, "loss saved while closed [1]", 0.2, 0.7, saved, "New Zealand crop-house advice and US extension modules: 20 to 70 % while closed", "catalogs/starter/night-covers.csv");
        }
    }

    [Fact]
    public void Edge_losses_lie_between_published_slabs() =>
        Assert.All(Starter.Of<PerimeterBoard>(), b => Assert.InRange(b.EdgeLossWPerMK, 0.3, 1.263));

    [Fact]
    public void Barrels_and_tanks_hold_no_more_than_their_shape()
    {
        Assert.All(Starter.Of<Barrel>(), b => Assert.InRange(b.VolumeL, 0.5 * Full(b), 1.02 * Full(b)));
        Assert.All(Starter.Of<Tank>(), t => Assert.InRange(t.VolumeL, 0.4 * t.FootprintM2 * t.HeightM * 1000, 1.02 * t.FootprintM2 * t.HeightM * 1000));

        // A ball has the least surface of all shapes.
        Assert.All(Starter.Of<Tank>(), t => Assert.True(t.SurfaceM2 > Math.Pow(36 * Math.PI * t.VolumeL * t.VolumeL / 1e6, 1.0 / 3), t.Id));
        static double Full(Barrel b) => Math.PI / 4 * b.DiameterM * b.DiameterM * b.HeightM * 1000;
    }

    [Fact]
    public void Circulators_are_no_better_than_pumps_can_be() =>
        Assert.All(Starter.Of<Pump>(), p =>
        {
            var flows = Enumerable.Range(1, 99).Select(i => i / 100.0 * p.FlowAtNoHeadLPerMin / 60000);
            var best = flows.Max(q => PumpCurve.Of(p).HeadM(q) * 9806.65 * q) / p.Watts;
            Validation.Within("part pump " + p.Id, "best efficiency of the curve [1]", 0.05, 0.40, best, "common practice, no source: small circulators 0.05 to 0.40", "catalogs/starter/pumps.csv");
        });

    // A fan's pressure falls as the square of the flow.
    [Fact]
    public void Fans_of_stores_are_no_better_than_small_fans_can_be() =>
        Assert.All(Starter.Of<StoreFan>(), f =>
        {
            var shares = Enumerable.Range(1, 99).Select(i => i / 100.0);
            var best = shares.Max(x => x * (1 - x * x)) * f.FlowAtNoHeadM3PerH / 3600 * f.HeadAtNoFlowPa / f.Watts;
            Validation.Within(
                "part store-fan " + f.Id,
                "best efficiency of the curve [1]",
                0.05,
                0.4,
                best,
                "common practice, no source: small duct fans 0.05 to 0.40",
                "catalogs/starter/store-fans.csv");
        });

    [Fact]
    public void Earth_pipes_have_walls_and_ribs_that_can_be() =>
        Assert.All(Starter.Of<EarthPipe>(), p =>
        {
            Assert.InRange((p.OuterMm - p.BoreMm) / 2, 2, 10);
            Assert.InRange(p.WallWPerMK, 0.15, 0.5);
            Assert.True(p.FrictionFactor == 1 || p.FilmFactor <= 1 + (p.FrictionFactor - 1) / 2, p.Id);
        });

    [Fact]
    public void Drives_are_no_better_than_their_watts() =>
        Assert.All(Starter.Of<Drive>(), d => Assert.True(d.TorqueNm * d.SpeedDegPerS * Math.PI / 180 <= d.Watts * d.GearEfficiency, FormattableString.Invariant($"{d.Id}: {d.TorqueNm * d.SpeedDegPerS * Math.PI / 180:0.0} W out of {d.Watts}")));

    // As large a collector as fits, up to 2 m² and 36 kg, on a chord of half its area (or 0.9 m): EN 1991-1-4, 1.8 and a quarter of the chord; doubled friction at the start.
    [Fact]
    public void Each_turning_mount_has_a_drive_that_moves_one_collector_at_its_working_wind() =>
        Assert.All(Starter.Of<CollectorMount>().Where(m => m.NeedsDrive), m =>
        {
            var (area, chord, kg) = m.MaxAreaM2 < 2 ? (1.1, 0.9, 19) : (2.0, 1.0, 36);
            var mass = m.WeightKg + kg;
            var wind = WindForce.MomentNm(WindForce.ForceN(WindForce.PressurePa(m.WorkingWindMPerS), area, PlateWind.Signboard), chord);
            var weight = m.Axis == TurningAxis.Sloping ? ShaftMoments.ImbalanceNm(mass, m.ImbalanceM) : 0;
            var friction = 2 * ShaftMoments.BearingFrictionNm(m.BearingFriction, mass * Gravity.StandardMPerS2, m.BearingDiameterMm / 1000);
            Assert.Contains(Starter.Of<Drive>(), d => d.TorqueNm >= wind + weight + friction);
            Assert.Contains(Starter.Of<Drive>(), d => d.TorqueNm < wind + weight + friction);
        });

    private static T Find<T>(string id)
        where T : class, IPart => Starter.TryFind<T>(id, out var part) ? part : throw new ArgumentException(id);

    private static Catalogue Load()
    {
        var faults = new FaultList();
        var catalogue = Catalogue.Load([Repository.At("catalogs", "starter")], Kinds.All, faults);
        faults.ThrowIfAny();
        return catalogue;
    }
}
