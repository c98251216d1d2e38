namespace DesignSearch.Climate;

/// <summary>When the sun says the radiation was measured, against what the format says.</summary>
/// <param name="DeclaredMin">Middle of the interval after the stamp [min], as the format has it.</param>
/// <param name="FoundMin">The shift at which global irradiance follows the sun best [min], in steps of 5.</param>
/// <param name="UsedMin">The shift that was used [min].</param>
/// <param name="Correlation">Correlation with the sun above the atmosphere at the found shift, −1 to 1.</param>
public sealed record SunFit(double DeclaredMin, double FoundMin, double UsedMin, double Correlation);
