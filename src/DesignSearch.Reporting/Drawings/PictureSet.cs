using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The pictures of a layout, and how their files are called.</summary>
internal static class PictureSet
{
    /// <summary>All that there is to draw of a layout, first where things stand, then what joins them; none where it is only the house.</summary>
    public static IReadOnlyList<Picture> Of(JudgedLayout layout)
    {
        if (layout.Bill.Count == 0)
            return [];
        Picture?[] all =
        [
            PlanPicture.Of(layout),
            ElevationPicture.Of(layout),
            SectionPicture.Of(layout),
            FramePicture.Of(layout),
            SchemePicture.Of(layout, "water", "Where water and air go", Medium.Water, Medium.Air),
            SchemePicture.Of(
                layout, "control", "Where current and signals go, and what turns", Medium.Current, Medium.Signal, Medium.Shaft),
            .. WiringPicture.Of(layout),
        ];
        return [.. all.OfType<Picture>()];
    }

    /// <summary>Name of a picture's file: <c>3-slug-plan.svg</c>.</summary>
    public static string NameOf(JudgedLayout layout, Picture picture) => ListFile.NameOf(layout)[..^".csv".Length] + $"-{picture.Name}.svg";
}
