using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Reporting.Words;

/// <summary>What is said of a house that is more than a plain gable house.</summary>
internal static class SectionWords
{
    public const string Title = "House, seen from its end";
    public const string LeansThere = "It leans on the wall that is drawn thick and broken.";
    public const string BackWall = "wall it leans on";
    public const string BaseWall = "base wall";
    public const string Ground = "ground outside";
    public const string Inside = "Outside sizes of the cover; walls are drawn without their thickness.";

    public static string Heights(HouseSize house, HouseSection section) => Written.Sentence(
        $"{Low(section.Shape)} {house.EavesM:0.00} m, {High(section.Shape)} {house.RidgeM:0.00} m above the floor",
        $"{(section.FloorBelowM > 0 ? Below(section.FloorBelowM) : "")}").TrimEnd();

    public static string Wall(double heightM) => Written.Sentence($"{heightM:0.00} m above the floor");

    public static string Facets(HouseSection section) => Written.Sentence(
        $"The hoop is reckoned as {section.Cover.Zip(section.Cover.Skip(1)).Count(p => p.First.X < p.Second.X):0} flat pieces:",
        $"its area within 0.2 in 100.");

    public static string Below(double metres) => Written.Sentence($"which lies {metres:0.00} m below the ground outside");

    private static string Low(HouseShape shape) => shape switch
    {
        HouseShape.LeanTo => "front",
        HouseShape.Tunnel => "straight sides",
        _ => "eaves",
    };

    private static string High(HouseShape shape) => shape switch
    {
        HouseShape.LeanTo => "at the wall",
        HouseShape.Tunnel => "top",
        _ => "ridge",
    };
}
