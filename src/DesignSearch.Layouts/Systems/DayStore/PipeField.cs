namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>Pipes side by side under the whole floor, along its long side.</summary>
/// <param name="Count">Pipes, 1 or more.</param>
/// <param name="LengthM">Length of each [m].</param>
/// <param name="SpacingM">From middle to middle [m].</param>
internal sealed record PipeField(int Count, double LengthM, double SpacingM)
{
    // Room for the two headers, inside the house (own choice).
    private const double HeadersM = 1;
    private const double LeastM = 1;

    /// <summary>All pipe [m].</summary>
    public double TotalM => Count * LengthM;

    /// <summary>The field whose pipe comes nearest to what is wanted.</summary>
    /// <param name="longM">Long side of the floor [m].</param>
    /// <param name="shortM">Short side [m].</param>
    /// <param name="metresPerM2">Pipe wanted for each square metre of floor [m/m²].</param>
    /// <param name="outerMm">Outer diameter of the pipe [mm]: more than fit side by side are not laid.</param>
    public static PipeField Of(double longM, double shortM, double metresPerM2, double outerMm)
    {
        var (along, across) = (Math.Max(longM, shortM), Math.Min(longM, shortM));
        var length = Math.Max(LeastM, along - HeadersM);
        var most = Math.Max(1, (int)(across * 1000 / outerMm));
        var count = Math.Clamp((int)Math.Round(metresPerM2 * along * across / length), 1, most);
        return new(count, length, across / count);
    }
}
