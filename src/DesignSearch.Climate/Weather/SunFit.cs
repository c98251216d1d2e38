namespace DesignSearch.Climate.Weather;

/// <summary>When the sun says the radiation was measured, against what the format says.</summary>
/// <param name="FoundMin">The shift at which global irradiance follows the sun best [min], in steps of 5.</param>
/// <param name="UsedMin">The shift that was used [min].</param>
/// <param name="Correlation">Correlation with the sun above the atmosphere at the found shift, −1 to 1.</param>
public sealed record SunFit(double FoundMin, double UsedMin, double Correlation)
{
    private const double Enough = 0.3;

    /// <summary>What the sun says about the clock of the file, in one sentence.</summary>
    public string Sentence => Correlation == 0 ? "The file has no sun to check its clock by."
        : Correlation < Enough ? "The light of the file follows the sun too loosely to check its clock."
        : FormattableString.Invariant($"Held against the sun, the light of the file fits best {Shift(FoundMin)} its stamps; it was read as the light {Shift(UsedMin)} them.");

    private static string Shift(double minutes) => FormattableString.Invariant($"{Math.Abs(minutes):0} min {(minutes < 0 ? "before" : "after")}");
}
