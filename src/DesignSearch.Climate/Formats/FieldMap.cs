using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Formats;

/// <summary>One column of a format.</summary>
/// <param name="Field">What it holds.</param>
/// <param name="Names">Names it may carry; compared without case, the unit in brackets cut off.</param>
/// <param name="Unit">Unit where the name carries none.</param>
/// <param name="Needed">Without it the file cannot be used.</param>
internal sealed record FieldMap(WeatherField Field, IReadOnlyList<string> Names, string Unit, bool Needed = false);
