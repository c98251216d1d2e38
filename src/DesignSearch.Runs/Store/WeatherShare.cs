namespace DesignSearch.Runs.Store;

/// <summary>Where one field of the weather came from, as shares of its hours.</summary>
/// <param name="Field">The field in plain words.</param>
/// <param name="Measured">Read from an instrument [0…1].</param>
/// <param name="Modelled">Computed by the provider [0…1].</param>
/// <param name="Filled">Filled from neighbouring hours [0…1].</param>
/// <param name="Synthesised">Made from other figures [0…1].</param>
public sealed record WeatherShare(string Field, double Measured, double Modelled, double Filled, double Synthesised);
