namespace DesignSearch.Reporting.Front;

/// <summary>How large the chart of life cost against frost is drawn, and whether it stands alone; lengths are about pixels.</summary>
/// <param name="Width">Width of the whole drawing.</param>
/// <param name="Height">Height of the whole drawing.</param>
/// <param name="Left">From the left edge to the field of points.</param>
/// <param name="Right">From the field to the right edge.</param>
/// <param name="Top">From the top edge to the field.</param>
/// <param name="Bottom">From the field to the bottom edge.</param>
internal sealed record FrontFrame(int Width, int Height, int Left, int Right, int Top, int Bottom)
{
    /// <summary>A picture file, which must say all of it by itself.</summary>
    public static readonly FrontFrame File = new(960, 640, 84, 24, 70, 92) { StandsAlone = true };

    /// <summary>On the page, beside its words and legend.</summary>
    public static readonly FrontFrame Wide = new(860, 480, 74, 14, 16, 50) { MostPale = 500 };

    /// <summary>The same on a phone.</summary>
    public static readonly FrontFrame Narrow = new(340, 420, 70, 10, 16, 50) { MostPale = 500 };

    /// <summary>True where finding, note and legend are drawn into it.</summary>
    public bool StandsAlone { get; init; }

    /// <summary>Most beaten layouts that are drawn, the best ranked first.</summary>
    public int MostPale { get; init; } = int.MaxValue;

    /// <summary>Width of the field of points.</summary>
    public double FieldWidth => Width - Left - Right;

    /// <summary>Height of the field of points.</summary>
    public double FieldHeight => Height - Top - Bottom;
}
