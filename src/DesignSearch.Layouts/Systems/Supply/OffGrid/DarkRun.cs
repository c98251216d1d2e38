namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>The run of dark days that takes most out of a battery.</summary>
/// <param name="Wh">What it takes out, what the sun brings meanwhile taken off [W·h].</param>
/// <param name="Hours">Its length [h].</param>
/// <param name="Winter">Name of the winter.</param>
internal readonly record struct DarkRun(double Wh, double Hours, string Winter);
