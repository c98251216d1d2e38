using DesignSearch.Search;

namespace DesignSearch.Runs.Journal;

/// <summary>How many numbers a line of a journal holds.</summary>
/// <param name="Levels">Levels of a layout's choices.</param>
/// <param name="Objectives">Objectives.</param>
/// <param name="Violations">Violations, one a constraint.</param>
public readonly record struct JournalShape(int Levels, int Objectives, int Violations)
{
    /// <summary>The shape of a problem's evaluations.</summary>
    public static JournalShape Of(IProblem problem) => new(problem.Variables.Count, problem.Objectives.Count, problem.Constraints.Count);

    /// <summary>True where a line holds as many numbers as it should and each is a number.</summary>
    public bool Fits(double[] point, Evaluation evaluation) =>
        point.Length == Levels && evaluation.Objectives.Length == Objectives && evaluation.Violations.Length == Violations
        && Array.TrueForAll(point, double.IsFinite) && Array.TrueForAll(evaluation.Objectives, double.IsFinite)
        && Array.TrueForAll(evaluation.Violations, v => v >= 0 && double.IsFinite(v)) && double.IsFinite(evaluation.Merit);
}
