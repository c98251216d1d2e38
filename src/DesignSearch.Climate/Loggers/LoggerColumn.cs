namespace DesignSearch.Climate.Loggers;

/// <summary>One column of a logger's table.</summary>
/// <param name="Name">As the file writes it.</param>
/// <param name="Values">One value a row, NaN where there is none; on and off are 1 and 0.</param>
public sealed record LoggerColumn(string Name, double[] Values);
