using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season;
using DesignSearch.Season.House;
using DesignSearch.Season.Walls;

namespace DesignSearch.Layouts.Systems.Shell;

/// <summary>The solid walls of one house, and what is to be said of its shape.</summary>
internal sealed class DesignedShell(Greenhouse house) : DesignedSystem
{
    private const double JoulesPerKilojoule = 1000;

    // A dwelling that is let cool at night or left for a week (own choice) [K].
    private const double RoomDoubtK = 6;

    // Soil at the wall, and the thickness of the wall at the foot of the floor (own choice) [W/(m·K)], [m]. Both films of a floor, EN ISO 13370 [m²K/W].
    private const double SoilWPerMK = 1.2;
    private const double FootM = 0.24;
    private const double FloorFilmsM2KPerW = 0.21;

    public override IEnumerable<Caution> Cautions => ShellWords.Cautions(house);

    public override IEnumerable<PlantDoubt> Doubts => Room is { } room
        ?
        [
            new(
                new(ShellWords.RoomDoubt, room.RoomC, room.RoomC - RoomDoubtK, room.RoomC, ShellWords.RoomWhy, ShellWords.RoomWhat),
                (plant, celsius) => plant.With(new RoomBehindNumbers(celsius))),
        ]
        : [];

    public override IEnumerable<Upkeep> Upkeep => ShellWords.Upkeep(house);

    public override Installation Install(Installation plant)
    {
        var walled = Base is { } wall ? plant.With(wall) : plant;
        return Room is { } room ? walled.With(room) : walled;
    }

    private RoomBehindNumbers? Room => house.BackWall is { Behind: BehindWall.HeatedRoom } wall ? new(wall.RoomC) : null;

    private BaseWallNumbers? Base
    {
        get
        {
            var (wall, body) = (house.BaseWall, house.Geometry);
            if (wall.HeightM <= 0)
                return null;
            var films = 1 / SheetResistance.InsideFilmWPerM2K + 1 / SheetResistance.OutsideFilmWPerM2K;
            var sheet = 1 / wall.UWPerM2K - films;
            return new(body.BaseOpenM2, body.BaseBuriedM2, sheet, Soil(1 / wall.UWPerM2K), JoulesPerKilojoule * wall.CapacityKjPerM2K);
        }
    }

    // What the soil adds beside a wall in the ground: EN ISO 13370, wall of a heated basement (from memory).
    private double Soil(double wallM2KPerW)
    {
        var deep = house.FloorBelowM;
        if (deep <= 0)
            return 0;
        var asWall = SoilWPerMK * wallM2KPerW;
        var asFloor = Math.Min(asWall, FootM + SoilWPerMK * FloorFilmsM2KPerW);
        var u = 2 * SoilWPerMK / (Math.PI * deep) * (1 + 0.5 * asFloor / (asFloor + deep)) * Math.Log(deep / asWall + 1);
        return Math.Max(0, 1 / u - wallM2KPerW);
    }
}
