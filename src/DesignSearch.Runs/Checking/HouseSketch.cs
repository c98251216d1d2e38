using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Runs.Checking;

/// <summary>A greenhouse drawn in letters, gable first, near enough to scale: a slip in a length shows at once.</summary>
public static class HouseSketch
{
    private const int MostRows = 9;
    private const int MostColumns = 36;

    // A letter is about twice as high as it is wide.
    private const double LetterShape = 2;
    private const double RowsPerM = 2;

    /// <summary>The lines of the drawing, from the ridge down.</summary>
    /// <param name="house">The greenhouse.</param>
    public static IReadOnlyList<string> Of(Greenhouse house)
    {
        if (house.Shape != HouseShape.Gable)
            return SectionSketch.Of(house, Math.Min(RowsPerM, Math.Min(MostRows / house.RidgeM, MostColumns / (LetterShape * house.WidthM))), LetterShape);
        var scale = Math.Min(RowsPerM, Math.Min(MostRows / house.RidgeM, MostColumns / (LetterShape * house.WidthM)));
        var half = Math.Max(2, (int)Math.Round(scale * LetterShape * house.WidthM / 2));
        var roof = Math.Clamp((int)Math.Round(scale * (house.RidgeM - house.EavesM)), 1, half);
        var wall = Math.Max(1, (int)Math.Round(scale * house.EavesM));
        var lines = new List<string>();
        for (var row = 1; row <= roof; row++)
        {
            var (outer, inner) = (half * row / roof, row == 1 ? 0 : half * (row - 1) / roof);
            var slope = Slope(outer - inner);
            lines.Add(new string(' ', half - outer) + slope + new string(' ', 2 * inner) + Mirrored(slope) + Behind(row == 1, half - outer, $"ridge {house.RidgeM:0.0#} m"));
        }

        for (var row = 1; row <= wall; row++)
            lines.Add("|" + new string(row == wall ? '_' : ' ', 2 * half - 2) + "|" + Behind(row == 1, 0, $"eaves {house.EavesM:0.0#} m"));
        lines.Add(Written.Sentence($"{house.WidthM:0.0#} m wide, {house.LengthM:0.0#} m long"));
        return lines;
    }

    // Steep: /, flat: .-'
    private static string Slope(int columns) => columns switch
    {
        <= 0 => "",
        1 => "/",
        _ => "." + new string('-', columns - 2) + "'",
    };

    private static string Mirrored(string slope) => slope == "/" ? "\\" : string.Concat(slope.Reverse());

    private static string Behind(bool isThere, int blanks, FormattableString words) => isThere ? new string(' ', blanks + 2) + Written.Sentence(words) : "";
}
