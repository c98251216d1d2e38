namespace DesignSearch.Season.Kernel;

/// <summary>A column of the hourly table that one kind of source fills.</summary>
/// <param name="Id">Small letters and underscores, unit at its end, of no other column.</param>
/// <param name="Words">What a person calls it.</param>
/// <param name="Unit">"°C" for a temperature, "W" for heat that the source gives.</param>
/// <param name="IsElectricHeat">True for heat that is bought as electricity.</param>
public sealed record HourColumn(string Id, string Words, string Unit, bool IsElectricHeat = false);
