using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Store;

/// <summary>A house in one line of the report.</summary>
internal static class HouseWords
{
    public static string Of(Greenhouse house) => Written.Sentence(
        $"{Shape(house)}{house.LengthM:0.#} × {house.WidthM:0.#} m, {house.EavesM:0.#} m at the {Low(house.Shape)} and",
        $"{house.RidgeM:0.#} m at the {High(house.Shape)};",
        $"cover {house.CoverM2:0} m² with U {house.MeanCoverUWPerM2K:0.0} W/(m²K){Base(house)}{Fitted(house)}");

    private static string Fitted(Greenhouse house) => house.Fit is { } fit
        ? Written.Sentence(
            $"; fitted to its log, it loses {fit.Loss.Value:0.00} times what its drawing does",
            $"({fit.Loss.Low:0.00} to {fit.Loss.High:0.00})")
        : "";

    private static string Shape(Greenhouse house) => house.Shape switch
    {
        HouseShape.LeanTo => "lean-to " + Behind(house.BackWall!),
        HouseShape.Tunnel => "tunnel, ",
        _ => "",
    };

    private static string Behind(BackWall wall) => wall.Behind switch
    {
        BehindWall.HeatedRoom => Written.Sentence($"against a room at {wall.RoomC:0.#} °C, "),
        BehindWall.UnheatedRoom => "against an unheated room, ",
        _ => "against a free-standing wall, ",
    };

    private static string Low(HouseShape shape) => shape switch
    {
        HouseShape.LeanTo => "front",
        HouseShape.Tunnel => "straight sides",
        _ => "eaves",
    };

    private static string High(HouseShape shape) => shape switch
    {
        HouseShape.LeanTo => "wall",
        HouseShape.Tunnel => "top",
        _ => "ridge",
    };

    private static string Base(Greenhouse house) => house.BaseWall.HeightM <= 0 ? "" : Written.Sentence(
        $"; base wall {house.BaseWall.HeightM:0.0#} m high with U {house.BaseWall.UWPerM2K:0.0#}{Below(house.FloorBelowM)}");

    private static string Below(double metres) => metres > 0 ? Written.Sentence($", floor {metres:0.0#} m below the ground outside") : "";
}
