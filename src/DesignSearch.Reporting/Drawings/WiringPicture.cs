using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The wiring core by core, on as many sides as it takes; the wiring table of the page says the same.</summary>
internal static class WiringPicture
{
    /// <summary>Short name of the first side; the others have their number behind it.</summary>
    public const string Name = "cores";

    /// <summary>The sides; none where nothing is wired, or its numbers were not stored.</summary>
    public static IReadOnlyList<Picture> Of(JudgedLayout layout)
    {
        if (layout.Wires.All(w => w.Ends.Count == 0))
            return [];
        var drawn = WiringSheet.Of(layout);
        drawn.Sheets[^1].Legend([.. drawn.Told, PictureWords.WiringAdvice], drawn.Sheets[^1].Width);
        string[] says = [PictureWords.WiringAdvice, .. layout.Wires.Select(PictureWords.WireIs)];
        return
        [
            .. drawn.Sheets.Select((sheet, i) => new Picture(
                i == 0 ? Name : $"{Name}-{PictureWords.Number(i + 1)}",
                i == 0 ? PictureWords.WiringTitle : PictureWords.WiringTitle + PictureWords.GoesOn,
                says,
                sheet.Width,
                sheet.Height,
                sheet.Body,
                Markup.None)),
        ];
    }
}
