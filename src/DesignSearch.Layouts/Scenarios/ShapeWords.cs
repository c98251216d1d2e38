using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>What is said of a shape that cannot be.</summary>
internal static class ShapeWords
{
    public const string RidgeAboveEaves = "a ridge above the eaves";
    public const string UUnit = "W/(m²K), films included";
    public const string CapacityUnit = "kJ/(m²K)";
    public const string WallSide = "°: the side on which the wall stands, clockwise from true north";
    public const string TopUnit = "m above the floor of the house";

    public static string RidgeAlongWall(string key) =>
        $"no such key in a lean-to, whose ridge runs along its wall: '{key}' says where that stands";

    public static string OnlyLeanTo(string key) => $"no '{key}' but with shape = \"lean-to\"";

    public static string OnlyHeated(string key) => $"no '{key}' but with behind_back_wall = \"heated room\"";

    public static string HoopTooHigh(double mostM) => Written.Sentence(
        $"at most {mostM:0.0##} m: a hoop rises by half its width at most over its straight sides, and eaves_m says how high those are");

    public static string BaseUnderEaves(double eavesM) =>
        Written.Sentence($"at most {eavesM:0.0##} m: a base wall no higher than the eaves");

    public static string DoorInEnd(double endM2) => Written.Sentence($"at most {endM2:0.0#} m²: a door no larger than an end of the house");

    public static string WallHoldsEarth(string key) =>
        $"no more than '{key}': what lies below the ground outside needs a wall that holds the earth";

    public static string WallBearsRoof(double ridgeM) =>
        Written.Sentence($"at least {ridgeM:0.0##} m: the wall reaches up to where the roof joins it");
}
