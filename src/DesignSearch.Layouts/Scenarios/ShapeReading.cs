using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads the shape of a house and its solid walls out of [greenhouse].</summary>
internal sealed record ShapeReading
{
    private const string RidgeAzimuth = "ridge_azimuth_deg";
    private const string Ridge = "ridge_m";
    private const string Eaves = "eaves_m";
    private const string BaseHeight = "base_wall_m";
    private const string BaseU = "base_wall_u_w_per_m2k";
    private const string BaseCapacity = "base_wall_capacity_kj_per_m2k";
    private const string Below = "floor_below_m";
    private const string WallAzimuth = "back_wall_azimuth_deg";
    private const string WallTop = "back_wall_top_m";
    private const string WallU = "back_wall_u_w_per_m2k";
    private const string WallCapacity = "back_wall_capacity_kj_per_m2k";
    private const string BehindKey = "behind_back_wall";
    private const string RoomC = "room_behind_c";
    private const string DoorArea = "door_m2";
    private const string DoorU = "door_u_w_per_m2k";
    private const string DoorLight = "door_light";
    private const string DoorLeak = "door_leak_m3_per_h";
    private const string Azimuth = "° clockwise from true north";
    private const double UsualRoomC = 20;
    private const double TopM = 40;

    private static readonly string[] Shapes = ["gable", "lean-to", "tunnel"];
    private static readonly string[] Behinds = ["heated room", "unheated room", "outside"];
    private static readonly string[] WallKeys = [WallAzimuth, WallTop, WallU, WallCapacity, BehindKey, RoomC];

    public required HouseShape Shape { get; init; }

    public required double LengthM { get; init; }

    public required double WidthM { get; init; }

    public required double EavesM { get; init; }

    public required double RidgeM { get; init; }

    public required double RidgeAzimuthDeg { get; init; }

    public required BackWall? BackWall { get; init; }

    public required BaseWall BaseWall { get; init; }

    public required double FloorBelowM { get; init; }

    public required HouseDoor Door { get; init; }

    public static ShapeReading Of(TomlTable table)
    {
        var shape = (HouseShape)Array.IndexOf(Shapes, table.Word("shape", Shapes, Shapes[0]));
        var foot = BaseWallOf(table);
        var eaves = shape == HouseShape.Tunnel
            ? table.Number(Eaves, 0, 6, "m: how far the sides rise straight before they bend", foot.HeightM)
            : table.Number(Eaves, 0.3, 6, "m");
        var wall = shape == HouseShape.LeanTo ? BackWallOf(table) : null;
        var read = new ShapeReading
        {
            Shape = shape,
            LengthM = table.Number("length_m", 1, 60, "m"),
            WidthM = table.Number("width_m", 1, 20, "m"),
            EavesM = eaves,
            RidgeM = table.Number(Ridge, 0.5, 10, "m"),
            // Whoever looks along the ridge of a lean-to has its front on the right hand.
            RidgeAzimuthDeg = wall is null ? table.Number(RidgeAzimuth, 0, 360, Azimuth, 90) : (wall.AzimuthDeg + 90) % 360,
            BackWall = wall,
            BaseWall = foot,
            FloorBelowM = table.Number(Below, 0, 3, "m", 0),
            Door = DoorOf(table),
        };
        read.Together(table);
        if (wall is not null && table.Find(RidgeAzimuth) is { } turned)
            table.Fault(turned, ShapeWords.RidgeAlongWall(WallAzimuth));
        foreach (var key in wall is null ? WallKeys : [])
        {
            if (table.Find(key) is { } stray)
                table.Fault(stray, ShapeWords.OnlyLeanTo(key));
        }

        return read;
    }

    // What each number may be hangs on others.
    private void Together(TomlTable table)
    {
        // What was refused by itself stands here as another figure, and is not told twice.
        void Fault(string key, double taken, string expected)
        {
            if (table.Find(key) is { } value && value.Number == taken)
                table.Fault(value, expected);
        }

        if (RidgeM <= EavesM)
            Fault(Ridge, RidgeM, ShapeWords.RidgeAboveEaves);
        if (Shape == HouseShape.Tunnel && RidgeM - EavesM > WidthM / 2 + 1e-9)
            Fault(Ridge, RidgeM, ShapeWords.HoopTooHigh(EavesM + WidthM / 2));
        if (table.Has(Eaves) && BaseWall.HeightM > EavesM)
            Fault(BaseHeight, BaseWall.HeightM, ShapeWords.BaseUnderEaves(EavesM));
        if (FloorBelowM > BaseWall.HeightM)
            Fault(Below, FloorBelowM, ShapeWords.WallHoldsEarth(BaseHeight));
        // An end: half of what low and high edge span, at least.
        var end = WidthM * ((EavesM + RidgeM) / 2 - BaseWall.HeightM);
        if (RidgeM > EavesM && Door.AreaM2 > end)
            Fault(DoorArea, Door.AreaM2, ShapeWords.DoorInEnd(end));
        if (BackWall is { } wall && wall.TopM < RidgeM)
            Fault(WallTop, wall.TopM, ShapeWords.WallBearsRoof(RidgeM));
    }

    private static BaseWall BaseWallOf(TomlTable table)
    {
        var height = table.Number(BaseHeight, 0, 3, "m", 0);
        double? unsaid = height > 0 ? null : 1;
        return new(
            height, table.Number(BaseU, 0.1, 5, ShapeWords.UUnit, unsaid), table.Number(BaseCapacity, 0, 2000, ShapeWords.CapacityUnit, height > 0 ? null : 0));
    }

    private static HouseDoor DoorOf(TomlTable table)
    {
        var area = table.Number(DoorArea, 0, 20, "m²", 0);
        return new(
            area, table.Number(DoorU, 0.1, 8, ShapeWords.UUnit, area > 0 ? null : 1), table.Number(DoorLight, 0, 0.95, CoverReading.LightUnit, 0),
            table.Number(DoorLeak, 0, 500, "m³/h", 0));
    }

    private static BackWall BackWallOf(TomlTable table)
    {
        var behind = (BehindWall)Array.IndexOf(Behinds, table.Word(BehindKey, Behinds));
        var isWarm = behind == BehindWall.HeatedRoom;
        if (!isWarm && table.Find(RoomC) is { } room)
            table.Fault(room, ShapeWords.OnlyHeated(RoomC));
        return new(
            table.Number(WallAzimuth, 0, 360, ShapeWords.WallSide), table.Number(WallTop, 0.5, TopM, ShapeWords.TopUnit), table.Number(WallU, 0.1, 3.5, ShapeWords.UUnit),
            table.Number(WallCapacity, 0, 2000, ShapeWords.CapacityUnit), behind, isWarm ? table.Number(RoomC, 0, 35, "°C", UsualRoomC) : UsualRoomC);
    }
}
