using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Checking;

/// <summary>A house of any shape drawn in letters from its end, its front on the left: column by column along its profile.</summary>
internal static class SectionSketch
{
    private const int LeastColumns = 4;

    /// <summary>The lines of the drawing, from the top down.</summary>
    /// <param name="house">The greenhouse.</param>
    /// <param name="rowsPerM">Rows to a metre.</param>
    /// <param name="letterShape">How much higher than wide a letter is.</param>
    public static IReadOnlyList<string> Of(Greenhouse house, double rowsPerM, double letterShape)
    {
        var columns = Math.Max(LeastColumns, (int)Math.Round(rowsPerM * letterShape * house.WidthM));
        int Row(double heightM) => Math.Max(0, (int)Math.Round(rowsPerM * heightM) - 1);
        // The wall of each side, then the cover between; row 0 stands on the floor.
        var (low, top) = (Row(house.EavesM), Row(house.RidgeM));
        var grid = Enumerable.Range(0, top + 1).Select(_ => Enumerable.Repeat(' ', columns + 2).ToArray()).ToArray();
        var isLeanTo = house.Shape == HouseShape.LeanTo;
        for (var row = 0; row <= top; row++)
        {
            grid[row][0] = house.EavesM > 0 && row <= low ? '|' : ' ';
            grid[row][^1] = isLeanTo ? '#' : grid[row][0];
        }

        var before = house.EavesM > 0 ? low : 0;
        for (var c = 1; c <= columns; c++)
        {
            var now = Row(HeightAt(house.Geometry.Profile, (c - 0.5) / columns * house.WidthM));
            for (var row = Math.Min(before + 1, now); row < now; row++)
                grid[row][c] = '/';
            for (var row = now + 1; row < before; row++)
                grid[row][c - 1] = '\\';
            grid[now][c] = now > before ? '/' : now < before ? '\\' : '-';
            before = now;
        }

        for (var c = 1; c <= columns; c++)
            grid[0][c] = grid[0][c] == ' ' ? '_' : grid[0][c];
        List<string> lines = [.. grid.Reverse().Select(r => new string(r).TrimEnd())];
        lines[0] += Written.Sentence($"  {High(house.Shape)} {house.RidgeM:0.0#} m");
        if (house.EavesM > 0 && low < top)
            lines[top - low] += Written.Sentence($"  {Low(house.Shape)} {house.EavesM:0.0#} m");
        lines.Add(Written.Sentence($"{house.WidthM:0.0#} m wide, {house.LengthM:0.0#} m long"));
        return lines;
    }

    private static double HeightAt(IReadOnlyList<(double AcrossM, double AboveM)> profile, double acrossM)
    {
        for (var i = 1; i < profile.Count; i++)
        {
            var ((x1, z1), (x2, z2)) = (profile[i - 1], profile[i]);
            if (x2 > x1 && acrossM <= x2)
                return z1 + (z2 - z1) * (acrossM - x1) / (x2 - x1);
        }

        return profile[^1].AboveM;
    }

    private static string Low(HouseShape shape) => shape == HouseShape.LeanTo ? "front" : "straight sides";

    private static string High(HouseShape shape) => shape == HouseShape.LeanTo ? "at the wall" : "top";
}
