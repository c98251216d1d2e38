namespace DesignSearch.Climate.Stations;

/// <summary>How a station's days differ from the means of their months.</summary>
/// <param name="MeanSdK">Standard deviation of the daily mean of air within each month [K], January first.</param>
/// <param name="LowSdK">Standard deviation of the daily lowest hour mean within each month [K].</param>
/// <param name="ClearnessSd">Standard deviation of the daily clearness, global over extraterrestrial irradiation, within each month.</param>
/// <param name="MeanLag">Correlation of the daily mean with the day before, within months, mean of the cold half's five months.</param>
/// <param name="ClearLowTie">Correlation of clearness and daily lowest within months, mean of the same.</param>
public sealed record StationSpread(IReadOnlyList<double> MeanSdK, IReadOnlyList<double> LowSdK, IReadOnlyList<double> ClearnessSd, double MeanLag, double ClearLowTie);
