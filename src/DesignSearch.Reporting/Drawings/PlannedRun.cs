namespace DesignSearch.Reporting.Drawings;

/// <summary>A way of pipes or cables on a plan.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="What">What lies in it.</param>
/// <param name="IsWater">True for pipes, with or without cables beside them.</param>
/// <param name="LengthM">Its length one way, as the bill has it [m].</param>
/// <param name="Points">Where it bends on the plan [m]; empty where it is not drawn.</param>
/// <param name="IsBroken">True where it is drawn shorter than it is, with a sign of breaking.</param>
internal sealed record PlannedRun(
    string From,
    string To,
    IReadOnlyList<string> What,
    bool IsWater,
    double LengthM,
    IReadOnlyList<(double X, double Y)> Points,
    bool IsBroken);
