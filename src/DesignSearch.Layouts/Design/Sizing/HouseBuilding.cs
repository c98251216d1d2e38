using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Skin;
using DesignSearch.Parts.Small;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>The house with what is added to its skin: lining, night cover, seals, edge board.</summary>
internal static class HouseBuilding
{
    private const string System = "house";

    // An open vent exchanges some 0.25 m/s through its area (common practice, no source): 0.25 m/s × 1200 J/(m³K).
    private const double VentWPerM2K = 300;

    // Share of the daylight that comes in by the wall away from the sun, per share of the cover that it is (estimate, no source).
    private const double ShadedWallLight = 0.4;

    public static HouseNumbers Build(Scenario scenario, Layout layout, Needs needs)
    {
        var house = scenario.Greenhouse;
        var bare = 1 / house.CoverUWPerM2K;
        var (liningR, light) = Lining(house, layout, needs, bare);
        var nightR = NightCover(house, layout, needs, bare + liningR);
        var leakage = Sealing(house, layout, needs);
        var edge = Edge(house, layout, needs);
        return new HouseNumbers
        {
            FrostLimitC = house.FrostLimitC,
            CoverAreaM2 = house.CoverM2,
            CoverResistanceM2KPerW = SheetResistance.FromUValue(house.CoverUWPerM2K),
            LiningResistanceM2KPerW = liningR,
            NightCoverResistanceM2KPerW = nightR,
            SkyViewFactor = house.SkyViewFactor,
            LiningTransmittance = light,
            FloorAreaM2 = house.FloorM2,
            VolumeM3 = house.VolumeM3,
            PerimeterM = house.PerimeterM,
            EdgeLossWPerMK = edge,
            AirChangesPerHour = house.AirChangesPerHour * leakage,
            AirChangesPerHourPerMPerS = house.AirChangesPerHourPerMPerS * leakage * WindBreak(house, layout, needs),
            VentWPerK = VentWPerM2K * house.VentAreaM2,
        };
    }

    private static (double ResistanceM2KPerW, double Light) Lining(Greenhouse house, Layout layout, Needs needs, double bare)
    {
        if (!needs.Catalogue.TryFind<Lining>(layout["lining"].Id, out var lining))
            return (0, 1);
        if (lining.Transmittance > 0)
        {
            needs.Add(lining, house.CoverM2 * Cuts, System, "Keeps a layer of still air under the cover, day and night; 5 % for cuts included.", "inside, under roof and walls");
            return (lining.ResistanceM2KPerW, lining.Transmittance);
        }

        // A board lets no light through, so it covers only the long wall away from the sun.
        var wall = house.LengthM * house.EavesM;
        var share = wall / house.CoverM2;
        needs.Add(lining, wall * Cuts, System, "Insulates the wall that sees no winter sun; 5 % for cuts included.", "inside of the long wall away from the sun");
        return (Spread(bare, lining.ResistanceM2KPerW, share), 1 - ShadedWallLight * share);
    }

    private static double NightCover(Greenhouse house, Layout layout, Needs needs, double under)
    {
        if (!needs.Catalogue.TryFind<NightCover>(layout["night_cover"].Id, out var cover))
            return 0;
        needs.Add(cover, house.CoverM2 * Cuts, System, "Closed from dusk to dawn it keeps the night's heat in; 5 % for cuts included.", "under the roof and down the walls");
        if (cover.IsAutomatic)
        {
            needs.Small(SmallPartRole.CoverMotor, 2, System, "Draws the cover at dusk and opens it at dawn.", "one at each side of the roof", 24);
            needs.Small(SmallPartRole.CoverWires, house.CoverM2, System, "Carries the cover and keeps its edges closed.", "under the roof");
            needs.Small(SmallPartRole.LightSensor, 1, System, "Tells the cover motor dusk from day.", "outside, facing the open sky");
        }

        return Spread(under, cover.ResistanceM2KPerW, 1 - cover.EdgeLeak);
    }

    private static double Sealing(Greenhouse house, Layout layout, Needs needs)
    {
        if (!needs.Catalogue.TryFind<Sealing>(layout["sealing"].Id, out var sealing))
            return 1;
        needs.Add(sealing, Math.Ceiling(house.FloorM2 / sealing.FloorUpToM2), System, "Stops warm air from leaking out at door, vents and base.", "door, vents, laps and base");
        return sealing.LeakageFactor;
    }

    private static double WindBreak(Greenhouse house, Layout layout, Needs needs)
    {
        if (!needs.Catalogue.TryFind<WindBreak>(layout["wind_break"].Id, out var shelter))
            return 1;
        needs.Add(shelter, house.LengthM + house.WidthM, System, "Takes the wind off the house, so that less air is blown through its gaps.", "along the two windward sides, two to five times its height away, clear of the noon sun");
        return shelter.WindFactor;
    }

    private static double Edge(Greenhouse house, Layout layout, Needs needs)
    {
        if (!needs.Catalogue.TryFind<PerimeterBoard>(layout["perimeter_board"].Id, out var board))
            return house.EdgeLossWPerMK;
        needs.Add(board, house.PerimeterM, System, "Keeps the warmth of the ground from leaving at the edge.", "dug in round the outside of the floor");
        return Math.Min(house.EdgeLossWPerMK, board.EdgeLossWPerMK);
    }

    /// <summary>Allowance for cuts and overlaps (common practice, no source).</summary>
    internal const double Cuts = 1.05;

    /// <summary>Resistance that, over the whole area, loses as much as one that covers only a share of it.</summary>
    internal static double Spread(double under, double added, double share) => 1 / (share / (under + added) + (1 - share) / under) - under;
}
