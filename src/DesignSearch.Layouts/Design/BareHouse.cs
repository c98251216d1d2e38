using System.Runtime.CompilerServices;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.Covers;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Design;

/// <summary>The house as it stands, nothing added.</summary>
public static class BareHouse
{
    // An open vent exchanges some 0.25 m/s through its area (common practice, no source): 0.25 m/s × 1200 J/(m³K).
    private const double VentWPerM2K = 300;

    private const double JoulesPerKilojoule = 1000;
    private const double FilmM2KPerW = 0.0005;
    private const double ThrownBack = 0.1;
    private const double FilmGapM = 0.05;
    private const double RoofTiltDeg = 45;

    // A search asks for the same house many thousand times, and its areas are sums over its faces.
    private static readonly ConditionalWeakTable<Greenhouse, HouseNumbers> Known = [];

    /// <summary>Its numbers for the season model; worked out once for each house.</summary>
    public static HouseNumbers Numbers(Greenhouse house) => Known.GetValue(house, Of);

    /// <summary>U-value that some films that let heat radiation through would have at the conditions of EN 673, were the sky as warm as the air [W/(m²K)].</summary>
    /// <param name="longWave">Share of heat radiation that each lets through [0…1].</param>
    /// <param name="films">How many, 1 or more.</param>
    public static double FilmUWPerM2K(double longWave, int films) =>
        1 / (Films(longWave, films).ResistanceM2KPerW + 1 / SheetResistance.OutsideFilmWPerM2K + 1 / SheetResistance.InsideFilmWPerM2K);

    private static HouseNumbers Of(Greenhouse house)
    {
        var films = house.CoverLongWave > 0 ? Films(house.CoverLongWave, house.CoverLayers) : null;
        var numbers = Plain(house) with { CoverRadiation = films?.LongWave ?? CoverRadiation.Opaque };
        return films is not null ? numbers with { CoverResistanceM2KPerW = films.ResistanceM2KPerW }
            : house.CoverUIsOfHouse ? HouseUValue.Met(numbers, house.MeanCoverUWPerM2K)
            : numbers;
    }

    // What a film neither lets through nor throws back, a tenth, it takes in (from memory); some 5 cm of air between two, on a roof of usual slope.
    private static CoverMakeUp Films(double longWave, int count) =>
        CoverMakeUp.Of([.. Enumerable.Repeat(new CoverLayer(FilmM2KPerW, longWave, 1 - ThrownBack - longWave), count)], FilmGapM, RoofTiltDeg);

    private static HouseNumbers Plain(Greenhouse house) =>
        new()
        {
            FrostLimitC = house.FrostLimitC,
            CoverAreaM2 = house.CoverM2,
            CoverResistanceM2KPerW = SheetResistance.FromUValue(house.MeanCoverUWPerM2K),
            Contents = HouseContents.Numbers(house.Contents ?? []),
            SkyViewFactor = house.Geometry.SkyViewFactor,
            FloorAreaM2 = house.FloorM2,
            VolumeM3 = house.VolumeM3,
            PerimeterM = house.PerimeterM,
            EdgeLossWPerMK = house.EdgeLossWPerMK * house.EdgeShare,
            AirChangesPerHour = house.StillAirChangesPerHour,
            AirChangesPerHourPerMPerS = house.AirChangesPerHourPerMPerS,
            VentWPerK = VentWPerM2K * house.VentAreaM2,
            Wall = house.BackWall is { } wall ? Wall(house.Geometry, wall) : WallNumbers.None,
        };

    // The mass lies in the middle of the wall; sun falls on wall and floor by their areas (estimate, no source).
    private static WallNumbers Wall(HouseGeometry body, BackWall wall)
    {
        var isRoom = wall.Behind == BehindWall.HeatedRoom;
        var behind = 1 / (isRoom ? SheetResistance.InsideFilmWPerM2K : SheetResistance.OutsideFilmWPerM2K);
        var half = (1 / wall.UWPerM2K - 1 / SheetResistance.InsideFilmWPerM2K - behind) / 2;
        // An unheated room lies half-way between the two airs: it holds the heat back as much again as the wall does (EN 12831, b = 0.5, from memory).
        var room = wall.Behind == BehindWall.UnheatedRoom ? 1 / wall.UWPerM2K : 0;
        return new(
            body.BackWallM2, half, half + behind + room, JoulesPerKilojoule * wall.CapacityKjPerM2K, body.BackWallM2 / (body.BackWallM2 + body.FloorM2))
        {
            HasRoomBehind = isRoom,
        };
    }
}
