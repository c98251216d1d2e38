using DesignSearch.Layouts.Words;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What is said of a shape that may not be meant.</summary>
internal static class ShapeDoubtWords
{
    public static string InItsOwnShade(double azimuthDeg, string away) => Written.Sentence(
        $"The lean-to's wall stands on the sun's side (back_wall_azimuth_deg = {azimuthDeg:0.#}), so that its front looks {away}",
        $"and the wall shades it all winter: was the side meant to which the front looks?");
}
