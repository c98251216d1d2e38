namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Asks whether a lean-to can be meant that stands in the shade of its own wall.</summary>
internal static class ShapeDoubt
{
    // Within the tropics the sun stands on either side; elsewhere a front that looks so far from it sees none in winter.
    private const double TropicDeg = 25;
    private const double FarDeg = 120;

    /// <summary>What is in doubt, a sentence; none for any other house.</summary>
    public static IEnumerable<string> Of(Scenario scenario)
    {
        if (scenario.Greenhouse.BackWall is not { } wall || Math.Abs(scenario.Place.LatitudeDeg) < TropicDeg)
            yield break;
        var isNorth = scenario.Place.LatitudeDeg > 0;
        var off = Math.Abs(((wall.AzimuthDeg + 180 - (isNorth ? 180 : 0) + 540) % 360) - 180);
        if (off > FarDeg)
            yield return ShapeDoubtWords.InItsOwnShade(wall.AzimuthDeg, isNorth ? "north" : "south");
    }
}
