using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Parts.Money;
using DesignSearch.Season.Glass;
using DesignSearch.Season.House;
using DesignSearch.Season.Walls;
using DesignSearch.Testing;
using Xunit;
using static DesignSearch.Layouts.Tests.WrittenHouses;

namespace DesignSearch.Layouts.Tests;

/// <summary>Houses of other shapes from the scenario to the list, against sums by hand that stand in the comments.</summary>
public sealed class HouseShapesTests
{
    public static TheoryData<string, double[], double[]> ByHand => new()
    {
        // Front 5 × 1.8 = 9; ends 3 × (1.8 + 2.6)/2 = 6.6; roof 5 × √(3² + 0.8²) = 5 × 3.104835 = 15.524175: 37.724175 in all.
        // Wall 5 × 2.6 = 13; edge 5 + 2 × 3 = 11; air 15 × 2.2 = 33.
        // Night cover 37.724175 × 1.05 = 39.610384, so 39.7 at 11; edge 11, nine boards of 1.25, 11.25 at 10; one set of seals at 15; three rolls of 15 m² of lining at 3.20.
        { LeanTo, [9, 0, 6.6, 6.6, 15.524175, 0, 37.724175, 13, 11, 33, 0, 0], [436.70, 112.50, 15, 144] },
        // A half circle of radius 1.5 as 18 chords of 10°: 18 × 2 × 1.5 × sin 5° = 4.706410, times 6 = 28.238461 (the arc: 28.274334), half of it a side;
        // ends 18 × ½ × 1.5² × sin 10° = 3.516376; 35.271212 in all; edge 2 × (6 + 3) = 18; air 6 × 3.516376 = 21.098254.
        // Night cover 35.271212 × 1.05 = 37.034773, so 37.1; edge fifteen boards, 18.75; 18 m² of floor take two sets; 45 m² of lining.
        { Tunnel, [0, 0, 3.516376, 3.516376, 14.119230, 14.119230, 35.271212, 0, 18, 21.098254, 0, 0], [408.10, 187.50, 30, 144] },
        // Long walls 5 × (1.9 − 0.5) = 7; ends 3 × (1.4 + 2.2)/2 = 5.4; slopes 5 × √(1.5² + 0.8²) = 5 × 1.7 = 8.5: 41.8 in all. Base wall 0.5 × 16 = 8; edge 16; air 15 × 2.3 = 34.5.
        // Night cover 41.8 × 1.05 = 43.89, so 43.9; edge thirteen boards, 16.25; one set; 45 m² of lining.
        { OnBrick, [7, 7, 5.4, 5.4, 8.5, 8.5, 41.8, 0, 16, 34.5, 8, 0], [482.90, 162.50, 15, 144] },
        // Front 8 × (1.6 − 0.8) = 6.4; ends 2.5 × (0.8 + 1.6)/2 = 3; roof 8 × √(2.5² + 0.8²) = 8 × 2.624881 = 20.999048: 33.399048 in all. Wall 8 × 2.4 = 19.2.
        // Base wall round three sides, 8 + 2 × 2.5 = 13: 0.2 above the ground = 2.6, 0.6 in it = 7.8. Edge round all, 21; air 20 × 2 = 40.
        // Night cover 33.399048 × 1.05 = 35.069000, so 35.1; edge seventeen boards, 21.25; 20 m² take two sets; 45 m² of lining.
        { Sunken, [6.4, 0, 3, 3, 20.999048, 0, 33.399048, 19.2, 21, 40, 2.6, 7.8], [386.10, 212.50, 30, 144] },
        // An arc of rise 1.4 over 4: radius (4 + 1.96)/2.8 = 2.128571, half its angle 69.98404°, seven chords a side of 9.99772°: each 2 × 2.128571 × sin 4.99886° = 0.370950,
        // a side 7 × 7 × 0.370950 = 18.176553; straight sides 7 × 0.9 = 6.3; ends 4 × 0.9 + 14 × ½ × 2.128571² × sin 9.99772° − ½ × 4 × 0.728571 = 7.648990; 64.251087 in all.
        // Edge 22; air 7 × 7.648990 = 53.542932. Night cover 64.251087 × 1.05 = 67.463642, so 67.5; edge eighteen boards, 22.5; 28 m² take two sets; five rolls, 75 m².
        { FlatHoop, [6.3, 6.3, 7.648990, 7.648990, 18.176553, 18.176553, 64.251087, 0, 22, 53.542932, 0, 0], [742.50, 225, 30, 240] },
    };

    [Theory]
    [MemberData(nameof(ByHand))]
    public void Areas_edges_air_and_lists_are_those_of_a_sum_by_hand(string written, double[] expected, double[] prices)
    {
        using var small = new SmallScenario((Sizes, written), ("perimeter_board = \"none\"", ""));
        var scenario = small.Read();
        var body = scenario.Greenhouse.Geometry;
        double Face(FaceKind kind) => body.Faces.Where(f => f.Kind == kind).Sum(f => f.AreaM2);
        double[] found =
        [
            .. Enum.GetValues<FaceKind>().Select(Face), body.CoverM2, body.BackWallM2, body.PerimeterM, body.VolumeM3, body.BaseOpenM2, body.BaseBuriedM2,
        ];
        Assert.All(expected.Zip(found), p => Assert.Equal(p.First, p.Second, 2e-6));

        var layout = SmallScenario.Of(
            scenario, ("night_cover", "aluminised-hand"), ("perimeter_board", "edge-board-50"), ("sealing", "sealing-basic"), ("lining", "bubble-lining-large"));
        var bill = Pricer.Bill(LayoutBuilder.Build(scenario, layout).Parts, Stock.Empty);
        decimal Total(string id) => bill.Where(l => l.PartId == id).Sum(l => l.Total);
        Assert.Equal(prices.Select(p => (decimal)p), [Total("aluminised-hand"), Total("edge-board-50"), Total("sealing-basic"), Total("bubble-lining-large")]);
    }

    // Half circles and flatter arcs, from a foot and from straight sides: the pieces against the arc itself.
    [Theory]
    [InlineData(3, 0, 1.5)]
    [InlineData(4, 0.9, 2.3)]
    [InlineData(8, 0.5, 4.5)]
    [InlineData(5, 1.5, 2)]
    public void The_pieces_of_a_hoop_are_as_large_as_its_arc(double width, double eaves, double top)
    {
        using var small = new SmallScenario((Sizes, Tunnel));
        var body = (small.Read().Greenhouse with { WidthM = width, EavesM = eaves, RidgeM = top }).Geometry;
        var rise = top - eaves;
        var radius = (width * width / 4 + rise * rise) / (2 * rise);
        var arc = 2 * radius * Math.Atan2(width / 2, radius - rise) * 6;
        var pieces = body.Faces.Where(f => f.Kind is FaceKind.Roof or FaceKind.OtherRoof).Sum(f => f.AreaM2);
        Validation.Equal(FormattableString.Invariant($"hoop {width} m wide rising {rise} m, 6 m long"), "m² of cover", arc, pieces, 0.005 * arc, "analytic, arc of a circle", "HouseGeometry");
        Assert.InRange(pieces / arc, 0.998, 1);
    }

    // Ten degrees a piece are fine enough for the sun too: six times as many let as much in.
    [Fact]
    public void The_pieces_of_a_hoop_let_as_much_sun_in_as_many_more_would()
    {
        using var small = new SmallScenario((Sizes, Tunnel));
        var scenario = small.Read();
        var (winters, glazing) = (WinterSet.Make(scenario), new Glazing(2, 0.74));
        double Sun(IEnumerable<Facet> facets) =>
            HouseSun.TransmittedW(winters.Winters[0].Winter, [.. facets.Select(f => new Pane(f, glazing))], (w, mount, _) => winters.Planes.Get(w, mount)).Sum();
        IEnumerable<Facet> Hoop(int pieces) => Enumerable.Range(0, pieces).Select(i => (i + 0.5) * 180 / pieces)
            .Select(a => new Facet(12 * 1.5 * Math.Sin(Math.PI / 2 / pieces), Math.Abs(90 - a), a < 90 ? 180 : 0));
        var ours = Sun(scenario.Greenhouse.Geometry.Faces.Where(f => f.Kind is FaceKind.Roof or FaceKind.OtherRoof).SelectMany(f => f.Facets));
        Assert.Equal(1, ours / Sun(Hoop(18)), 1e-9);
        Assert.Equal(1, ours / Sun(Hoop(108)), 0.003);
    }

    // Brick of U 2.1 between two films of 1/7.69, half of 1/2.1 − 2/7.69 on either side of its mass; sun on wall and floor by their areas, 13 : 15.
    [Fact]
    public void A_lean_to_reaches_the_season_model_with_its_room()
    {
        using var small = new SmallScenario((Sizes, LeanTo));
        var plant = LayoutBuilder.Build(small.Read(), SmallScenario.Of(small.Read())).Installation;
        var wall = plant.House.Wall;
        Assert.Equal((13.0, 0.108056, 0.238095, 390_000.0, 0.464286, true), (
            Math.Round(wall.AreaM2, 6), Math.Round(wall.InnerResistanceM2KPerW, 6), Math.Round(wall.OuterResistanceM2KPerW, 6), wall.CapacityJPerM2K,
            Math.Round(wall.SunShare, 6), wall.HasRoomBehind));
        Assert.Equal(13 * 2.1, wall.ConductanceWPerK, 1e-9);
        Assert.Equal(20, plant.Find<RoomBehindNumbers>()!.RoomC);
        // Cover 37.724175 × 3.6, air 33 × 0.9 × 1253/3600, edge 11 × 1.26.
        Assert.Equal(135.807 + 10.3373 + 13.86, HouseLoss.CoefficientWPerK(plant), 1e-3);
    }

    // Half-way between the two airs an unheated room makes the wall twice as tight: 13 m² × 2.1/2; a wall that stands free has it whole, with the outer film.
    [Theory]
    [InlineData("unheated room", 13.65)]
    [InlineData("outside", 27.3)]
    public void What_lies_behind_a_wall_decides_what_it_loses(string behind, double expected)
    {
        using var small = new SmallScenario((Sizes, LeanTo.Replace("heated room", behind, StringComparison.Ordinal)));
        var scenario = small.Read();
        var plant = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario)).Installation;
        Assert.Equal(expected, plant.House.Wall.ConductanceWPerK, 1e-9);
        Assert.Null(plant.Find<RoomBehindNumbers>());
        Assert.Equal(behind == "outside" ? 16 : 11, scenario.Greenhouse.PerimeterM, 1e-9);
    }

    // Mean U of the covers: (14 × 5.75 + 10.8 × 2.4 + 17 × 3.6)/41.8; light (14 × 0.8 + 27.8 × 0.74)/41.8. Brick 0.5 m high, its sheet 1/2.1 − 1/7.69 − 1/25.
    [Fact]
    public void Each_face_has_its_own_cover_and_the_foot_its_wall()
    {
        using var small = new SmallScenario((Sizes, OnBrick));
        var (scenario, panes) = (small.Read(), HousePanes.Of(small.Read().Greenhouse, null));
        Assert.Equal(4.0100478, scenario.Greenhouse.MeanCoverUWPerM2K, 1e-6);
        Assert.Equal(0.7600957, scenario.Greenhouse.MeanCoverLight, 1e-6);
        Assert.Equal([(1, 0.8), (1, 0.8), (2, 0.74), (2, 0.74), (2, 0.74), (2, 0.74)], panes.Select(p => (p.Glazing.Layers, p.Glazing.NormalTransmittance)));
        var plant = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario)).Installation;
        Assert.Equal((1 / 4.0100478) - (1 / 25.0) - (1 / 7.69), plant.House.CoverResistanceM2KPerW, 1e-7);
        var wall = plant.Find<BaseWallNumbers>()!;
        Assert.Equal((8.0, 0.0, 0.306151, 390_000.0), (wall.OpenM2, wall.BuriedM2, Math.Round(wall.ResistanceM2KPerW, 6), wall.CapacityJPerM2K));
        Assert.Equal(8 * 2.1, wall.OutwardWPerK, 1e-9);
        // A board on the long wall, 5 × 1.4 × 1.05 = 7.35, bought as 7.4; the pack is 0.72: eleven, 7.92 m² at 12.
        var board = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, ("lining", "north-board-50"))).Parts;
        Assert.Equal(95.04m, Pricer.Bill(board, Stock.Empty).Single(l => l.PartId == "north-board-50").Total);
    }

    // A wooden door of 2 m², U 2, in a house of 49.8 m² of U 3.6 and 34.5 m³: U (49.8 × 3.6 − 2 × 1.6)/49.8 = 3.535743; air 0.9 + 10/34.5 an hour; sun through 6.9 − 2 of the first end.
    // Lining and night cover on 47.8 m²: 47.8 × 1.05 = 50.19, so 50.2 of the screen at 11, four rolls of lining of 15 m² at 3.20 (50.19 by 15).
    [Fact]
    public void A_door_is_told_apart_from_the_cover()
    {
        using var small = new SmallScenario((Sizes, Sizes + "door_m2 = 2\ndoor_u_w_per_m2k = 2\ndoor_leak_m3_per_h = 10\n"));
        var scenario = small.Read();
        var layout = SmallScenario.Of(scenario, ("night_cover", "aluminised-hand"), ("lining", "bubble-lining-large"));
        var built = LayoutBuilder.Build(scenario, layout);
        Assert.Equal(3.535743, scenario.Greenhouse.MeanCoverUWPerM2K, 1e-6);
        Assert.Equal(49.8, built.Installation.House.CoverAreaM2, 1e-9);
        Assert.Equal(0.9 + (10 / 34.5), built.Installation.House.AirChangesPerHour, 1e-9);
        var panes = HousePanes.Of(scenario.Greenhouse, null);
        Assert.Equal([9.5, 9.5, 4.9, 6.9, 8.5, 8.5], panes.Select(p => Math.Round(p.Facet.AreaM2, 9)));
        var bill = Pricer.Bill(built.Parts, Stock.Empty);
        Assert.Equal([552.20m, 192m], new[] { "aluminised-hand", "bubble-lining-large" }.Select(id => bill.Single(l => l.PartId == id).Total));
        // Bare sheet 1/3.535743, lining 0.12 on 47.8 of 49.8 m².
        var bare = 1 / 3.535743;
        Assert.Equal(1 / ((47.8 / 49.8 / (bare + 0.12)) + (2 / 49.8 / bare)) - bare, built.Installation.House.LiningResistanceM2KPerW, 1e-6);
        using var lit = new SmallScenario((Sizes, Sizes + "door_m2 = 2\ndoor_u_w_per_m2k = 5.75\ndoor_light = 0.8\n"));
        Assert.Equal([(4.9, 0.74), (2.0, 0.8)], HousePanes.Of(lit.Read().Greenhouse, null).Skip(2).Take(2).Select(p => (Math.Round(p.Facet.AreaM2, 9), p.Glazing.NormalTransmittance)));
        using var wide = new SmallScenario((Sizes, Sizes + "door_m2 = 7\n"));
        Assert.Equal(["'door_u_w_per_m2k' in [greenhouse]: a number from 0.1 to 8 W/(m²K), films included", "at most 6.9 m²: a door no larger than an end of the house"],
            wide.Faults().Select(f => f.Expected).Order(StringComparer.Ordinal));
    }

    // EN ISO 13370: e^(−0.6/2.45) of the edge's loss; the wall in the ground, d_w = 1.2/2.1 = 0.571429, d_t = 0.24 + 1.2 × 0.21 = 0.492:
    // U = 2.4/(0.6 π) × (1 + 0.246/1.092) × ln(0.6/0.571429 + 1) = 1.119879, so 1/1.119879 − 1/2.1 of soil.
    [Fact]
    public void A_sunken_floor_loses_less_at_its_edge_and_its_wall_through_soil()
    {
        using var small = new SmallScenario((Sizes, Sunken));
        var scenario = small.Read();
        var plant = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario)).Installation;
        Assert.Equal(1.26 * 0.782784, plant.House.EdgeLossWPerMK, 1e-5);
        Assert.Equal(0.416763, plant.Find<BaseWallNumbers>()!.SoilResistanceM2KPerW, 1e-5);
        Assert.All(WinterSet.Make(scenario).Winters, w => Assert.Equal(0.6, w.Forcing.FloorBelowM));
    }

    // A long wall of height H over a strip at a distance d hides (1 − cos β)/2 of a level strip's sky, tan β = H/d (Lambert, two dimensions): here H = 6 − 2.2, d = 1.5.
    [Fact]
    public void A_wall_hides_the_sky_behind_it()
    {
        using var small = new SmallScenario((Sizes, LeanTo));
        var house = small.Read().Greenhouse;
        var cos = 1.5 / Math.Sqrt((1.5 * 1.5) + (3.8 * 3.8));
        Validation.Equal(
            "lean-to, sky of a level strip under a long wall", "share", (1 + cos) / 2, SkyShade.SkyView(new(1, 0, 180), house.Geometry, house.BackWall), 0.003,
            "analytic, two dimensions", "HouseGeometry");
        var roof = house.Geometry.Faces.Single(f => f.Kind == FaceKind.Roof).Facets[0];
        var horizon = SkyShade.Horizon(roof, house.Geometry, house.BackWall, null, null)!;
        Assert.Equal(Math.Atan(3.8 / 1.5) * 180 / Math.PI, horizon.AltitudeAt(0), 1e-9);
        Assert.Equal(Math.Atan(3.8 / 1.5 * Math.Cos(Math.PI / 4)) * 180 / Math.PI, horizon.AltitudeAt(45), 1e-9);
        Assert.All(Enumerable.Range(90, 181), a => Assert.Equal(0, horizon.AltitudeAt(a), 1e-9));
        // The front looks away from it and keeps its sky; the ends lose some.
        var front = house.Geometry.Faces.Single(f => f.Kind == FaceKind.LongWall).Facets[0];
        Assert.Equal(0.5, SkyShade.SkyView(front, house.Geometry, house.BackWall), 1e-3);
        Assert.InRange(SkyShade.SkyView(house.Geometry.Faces.Single(f => f.Kind == FaceKind.End).Facets[0], house.Geometry, house.BackWall), 0.2, 0.45);
        // A wall that ends where the roof begins hides nothing of the roof, but that half of it that lies below.
        var low = house.BackWall! with { TopM = 2.2 };
        Assert.Equal((1 + Math.Cos(roof.TiltDeg * Math.PI / 180)) / 2, SkyShade.SkyView(roof, house.Geometry, low), 1e-9);
    }

    [Fact]
    public void Hills_stand_about_the_house_too_and_the_wall_where_it_is_higher()
    {
        using var small = new SmallScenario((Sizes, LeanTo), ("horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [20, 20, 20, 20, 20, 20, 20, 20]"));
        var scenario = small.Read();
        var panes = HousePanes.Of(scenario.Greenhouse, scenario.Site.Horizon);
        Assert.All(panes, p => Assert.Equal(20, p.Horizon!.AltitudeAt(180), 1e-9));
        Assert.Equal(Math.Atan(3.8 / 1.5) * 180 / Math.PI, panes.Single(p => p.Facet.TiltDeg < 90).Horizon!.AltitudeAt(0), 1e-9);
        using var flat = new SmallScenario((Sizes, LeanTo), ("horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [0, 0, 0, 0, 0, 0, 0, 0]"));
        using var free = new SmallScenario((Sizes, LeanTo.Replace("top_m = 6", "top_m = 2.6", StringComparison.Ordinal)), ("horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [0, 0, 0, 0, 0, 0, 0, 0]"));
        Assert.True(Passed(small) < 0.8 * Passed(flat), "hills take sun");
        // The wall hides no sun that stands before the house, only sky behind the roof; on the south side it hides nearly all of the winter's sun.
        Assert.InRange(Passed(flat) / Passed(free), 0.95, 0.985);
        var south = LeanTo.Replace("azimuth_deg = 0", "azimuth_deg = 180", StringComparison.Ordinal);
        using var shaded = new SmallScenario((Sizes, south), ("horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", "horizon_deg = [0, 0, 0, 0, 0, 0, 0, 0]"));
        Assert.True(Passed(shaded) < 0.4 * Passed(flat), $"{Passed(shaded)} of {Passed(flat)}");
    }

    // A level strip in a ring of trees 30° high all round keeps cos² 30° = 0.75 of an even sky (Lambert).
    [Fact]
    public void Trees_about_the_house_are_its_own_where_they_are_told_by_themselves()
    {
        using var ring = new SmallScenario((Sizes, Sizes + "horizon_deg = [30, 30, 30, 30, 30, 30, 30, 30]\n"));
        using var plain = new SmallScenario();
        var (house, bare) = (ring.Read().Greenhouse, plain.Read().Greenhouse);
        Assert.Equal(0.75, SkyShade.SkyView(new(1, 0, 180), house.Geometry, null, house.Horizon), 1e-3);
        Assert.True(house.Geometry.SkyViewFactor < 0.75 * bare.Geometry.SkyViewFactor, $"{house.Geometry.SkyViewFactor} of {bare.Geometry.SkyViewFactor}");
        var panes = HousePanes.Of(house, ring.Read().Site.Horizon);
        Assert.All(panes, p => Assert.Equal(30, p.Horizon!.AltitudeAt(217), 1e-9));
        Assert.True(Passed(ring) < 0.8 * Passed(plain), $"{Passed(ring)} of {Passed(plain)}");
        // The collector keeps the site's hills, and without a word the house has them too.
        Assert.Equal(plain.Read().Site.HorizonDeg, ring.Read().Site.HorizonDeg);
        Assert.All(HousePanes.Of(bare, plain.Read().Site.Horizon), p => Assert.Equal(plain.Read().Site.Horizon!.AltitudeAt(90), p.Horizon!.AltitudeAt(90), 1e-12));
        using var seven = new SmallScenario((Sizes, Sizes + "horizon_deg = [30, 30, 30, 30, 30, 30, 30]\n"));
        Assert.Contains("a list of 8 numbers, found 7", seven.Faults().Single().Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0", false)]
    [InlineData("90", false)]
    [InlineData("180", true)]
    [InlineData("130", true)]
    public void A_lean_to_in_the_shade_of_its_own_wall_is_doubted(string side, bool isDoubted)
    {
        using var small = new SmallScenario((Sizes, LeanTo.Replace("azimuth_deg = 0", $"azimuth_deg = {side}", StringComparison.Ordinal)));
        Assert.Equal(isDoubted ? 1 : 0, small.Read().Doubts.Count(d => d.Contains("the wall shades it all winter", StringComparison.Ordinal)));
    }

    private static double Passed(SmallScenario of)
    {
        var scenario = of.Read();
        var judged = new LayoutAssessor(scenario, WinterSet.Make(scenario)).Simulate([LayoutBuilder.Build(scenario, SmallScenario.Of(scenario))])[0];
        return judged[0].Books.Of(HouseFlows.Sun);
    }

    [Fact]
    public void The_room_behind_a_wall_is_in_doubt()
    {
        using var small = new SmallScenario((Sizes, LeanTo));
        var built = LayoutBuilder.Build(small.Read(), SmallScenario.Of(small.Read()));
        var doubt = built.Systems.SelectMany(s => s.Doubts).Single();
        Assert.Equal(["the room behind the wall at 14 °C"], doubt.Figure.Ends.Select(doubt.Figure.What));
        Assert.Equal(14, doubt.Change(built.Installation, 14).Find<RoomBehindNumbers>()!.RoomC);
    }

    // Five kelvin more in the room are felt, and what it gives is booked as its own.
    [Fact]
    public void A_warmer_room_leaves_less_frost()
    {
        (double Frost, double Room) Of(string roomC)
        {
            using var small = new SmallScenario((Sizes, LeanTo.Replace("heated room\"", $"heated room\"\nroom_behind_c = {roomC}", StringComparison.Ordinal)));
            var scenario = small.Read();
            var outcome = new LayoutAssessor(scenario, WinterSet.Make(scenario)).Simulate([LayoutBuilder.Build(scenario, SmallScenario.Of(scenario))])[0][0];
            Assert.InRange(outcome.BalanceResidual, 0, 1e-9);
            return (outcome.FrostDegreeHoursKh, outcome.Books.Of(WallFlows.Room));
        }

        var (cool, warm) = (Of("15"), Of("20"));
        Assert.True(warm.Frost < 0.95 * cool.Frost && warm.Room > cool.Room + 100, $"{cool} {warm}");
    }
}
