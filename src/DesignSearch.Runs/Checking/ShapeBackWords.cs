using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Checking;

/// <summary>The lines in which a shape is read back that is more than a gable house with one cover down to the floor.</summary>
internal static class ShapeBackWords
{
    private static readonly string[] Sides = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>The word for what runs along the house.</summary>
    public static string Runs(Greenhouse house) => house.Shape == HouseShape.Tunnel ? "a tunnel that runs" : "the ridge runs";

    /// <summary>What the heated room takes off.</summary>
    public static string RoomGives(double watts) => Written.Sentence($"(the heated room gives {watts:0} W of it)");

    /// <summary>No line for a plain gable house.</summary>
    public static IEnumerable<string> Of(Greenhouse house)
    {
        var body = house.Geometry;
        if (house.BackWall is { } wall)
        {
            yield return Written.Sentence(
                $"Leans     on a wall on its {Side(wall.AzimuthDeg)} side, {body.BackWallM2:0.0} m² of U {wall.UWPerM2K:0.0#} and",
                $"{wall.CapacityKjPerM2K:0} kJ/m²K, {Behind(wall)}; its top is {wall.TopM:0.0#} m high");
        }

        if (house.BaseWall.HeightM > 0)
        {
            yield return Written.Sentence(
                $"Base      wall {house.BaseWall.HeightM:0.0#} m high, {body.BaseOpenM2 + body.BaseBuriedM2:0.0} m²",
                $"of U {house.BaseWall.UWPerM2K:0.0#} and",
                $"{house.BaseWall.CapacityKjPerM2K:0} kJ/m²K{Sunken(house.FloorBelowM, body.BaseBuriedM2)}");
        }

        if (house.Door.AreaM2 > 0)
        {
            yield return Written.Sentence(
                $"Door      {house.Door.AreaM2:0.0#} m² of U {house.Door.UWPerM2K:0.0#} in an end, light {100 * house.Door.Light:0} %,",
                $"joints {house.Door.LeakM3PerH:0} m³/h");
        }

        if (house is { Shape: HouseShape.Gable, BaseWall.HeightM: <= 0, RoofSheet: null, WallSheet: null, EndSheet: null })
            yield break;
        var faces = body.Faces.Select(f => Written.Sentence($"{Name(house.Shape, f.Kind)} {f.AreaM2:0.0} m²{Sheet(house, f.Kind)}"));
        yield return Written.Sentence($"Faces     {string.Join(", ", faces)}; edge of the floor {body.PerimeterM:0.0#} m");
    }

    private static string Sheet(Greenhouse house, FaceKind kind) =>
        house.SheetOf(kind) is var sheet && sheet == new CoverSheet(house.CoverUWPerM2K, house.CoverLight, house.CoverLayers) ? ""
            : Written.Sentence($" (U {sheet.UWPerM2K:0.0#}, light {100 * sheet.Light:0} %)");

    private static string Sunken(double belowM, double buriedM2) => belowM <= 0 ? "" :
        Written.Sentence($"; the floor lies {belowM:0.0#} m below the ground outside, so {buriedM2:0.0} m² of it stand in the earth");

    private static string Side(double azimuthDeg) => Sides[(int)Math.Round(azimuthDeg / 45) % Sides.Length];

    private static string Behind(BackWall wall) => wall.Behind switch
    {
        BehindWall.HeatedRoom => Written.Sentence($"with a room at {wall.RoomC:0.#} °C behind it"),
        BehindWall.UnheatedRoom => "with an unheated room behind it",
        _ => "with the open air behind it",
    };

    private static string Name(HouseShape shape, FaceKind kind) => (shape, kind) switch
    {
        (HouseShape.LeanTo, FaceKind.LongWall) => "front",
        (HouseShape.LeanTo, FaceKind.Roof) => "roof",
        (HouseShape.Tunnel, FaceKind.Roof) => "one side of the hoop",
        (HouseShape.Tunnel, FaceKind.OtherRoof) => "the other",
        (_, FaceKind.LongWall) => "one long wall",
        (_, FaceKind.OtherLongWall) => "the other",
        (_, FaceKind.End) => "one end",
        (_, FaceKind.OtherEnd) => "the other",
        (_, FaceKind.Roof) => "one roof side",
        _ => "the other",
    };
}
