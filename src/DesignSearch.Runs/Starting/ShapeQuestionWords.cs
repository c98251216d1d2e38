using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Starting;

/// <summary>What is asked about the shape of the house, and how the answer is found.</summary>
internal static class ShapeQuestionWords
{
    public const string Shape = "What does it look like from its end? [gable, lean-to or tunnel]";
    public const string ShapeFrom = "Gable: a ridge in the middle. Lean-to: one slope against a wall. Tunnel: a hoop.";
    public const string ShapeExpected = "gable, lean-to or tunnel";

    public const string LeanToHeights = "Height of the front and of the roof where it meets the wall? [m, two numbers]";
    public const string TunnelHeights = "How high do its sides rise straight before they bend, and how high is the top? [m, two numbers]";

    public const string Side = "On which side of the greenhouse does its wall stand? [north, north-east and so on, or degrees]";
    public const string SideFrom = "Stand in it with your back to the front: what you look at is that side. True north, not the compass's.";
    public const string SideExpected = "north, north-east, east and so on, or degrees from 0 to 360";

    public const string Behind = "What lies behind that wall? [the °C of a heated room, or unheated, or outside]";
    public const string BehindFrom =
        "A room is warm if it is heated all winter, by night too: give the least it falls to. A shed or garage is unheated.";
    public const string BehindExpected = "a number from 0 to 35, unheated, or outside";

    public const string WallOf = "What is that wall made of? [brick, block, stone, timber or insulated]";
    public const string WallOfFrom =
        "Look at an edge or a window reveal: insulated means ten centimetres or so of it. Other figures can be put in later.";
    public const string WallOfExpected = "brick, block, stone, timber or insulated";

    public const string Top = "How high is the top of that wall, or of the house it belongs to? [m above the greenhouse's floor]";
    public const string TopFrom = "Its storeys: some three metres each. It hides sun and sky from the roof in front of it.";

    public const string Base = "How high is a solid wall round its foot, under the cover? [m, 0 for none]";
    public const string BaseFrom = "From the floor to where the cover begins. A kerb of a few centimetres is none.";

    public const string BaseOf = "What is it made of? [brick, block, stone, timber or insulated]";

    public const string Below = "How far does the floor lie below the ground outside? [m, 0 for level]";
    public const string BelowFrom = "A straight board laid out of the door tells. What lies in the ground is warmer in winter.";

    public static string HoopExpected(double mostM) => Written.Sentence(
        $"two numbers, the second higher by {mostM:0.##} at most: a hoop rises by half its width over its straight sides");

    public static string TopExpected(double ridgeM) => Written.Sentence($"a number from {ridgeM:0.##}, where the roof meets it, to 40");

    public static string BaseExpected(double mostM) => Written.Sentence($"a number from 0 to {mostM:0.##}, no higher than the eaves");

    public static string BelowExpected(double mostM) =>
        Written.Sentence($"a number from 0 to {mostM:0.##}, no deeper than the wall round it is high");

    public static readonly string[] ShapePicture =
    [
        "      /\\            #|       _____",
        "     /  \\       .-''#|     /       \\",
        "    |    |     |    #|    |         |",
        "    gable      lean-to       tunnel",
    ];
}
