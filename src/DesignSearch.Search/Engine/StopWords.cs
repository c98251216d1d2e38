using System.Globalization;
using DesignSearch.Search.Proof;

namespace DesignSearch.Search.Engine;

/// <summary>Why a search ended, in a sentence.</summary>
internal static class StopWords
{
    public static string Of(StopReason reason, SearchSettings settings, long evaluations, long met) => reason switch
    {
        StopReason.Budget when settings.MaxEvaluations == 1 => "The one evaluation asked for was made.",
        StopReason.Budget => FormattableString.Invariant($"All {settings.MaxEvaluations} evaluations asked for were made."),
        StopReason.Time => FormattableString.Invariant($"The time was up after {Evaluations(evaluations)}."),
        StopReason.Cancelled => FormattableString.Invariant($"It was stopped after {Evaluations(evaluations)}."),
        StopReason.Stagnation => FormattableString.Invariant(
            $"The front hardly moved over the last {settings.StagnationEvaluations} of {Evaluations(evaluations)}."),
        StopReason.Target => FormattableString.Invariant($"The target was reached after {Evaluations(evaluations)}."),
        StopReason.Enumerated when met == 1 => "The only choice was looked at, so the answer is exact.",
        StopReason.Enumerated => string.Create(
            CultureInfo.InvariantCulture,
            $"All {met} choices were looked at and the {evaluations} that pass the first checks were evaluated, so the answer "
                + $"is exact."),
        StopReason.Exhausted => string.Create(
            CultureInfo.InvariantCulture,
            $"After {Evaluations(evaluations)} everything else was gone through: nothing that passes the first checks is left that could "
                + $"better the front, so the answer is exact."),
        _ => string.Create(
            CultureInfo.InvariantCulture,
            $"After {Evaluations(evaluations)} many further draws found no choice that passes the first checks and could better the front; "
                + $"that is no proof that there is none."),
    };

    public static string Of(SearchProof proof) => proof.IsComplete
        ? FormattableString.Invariant($"Branch and bound with {proof.Simulations} simulations proved that nothing better exists.")
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Branch and bound could not prove it with {proof.Simulations} simulations and {proof.Boxes} boxes; bounds leave at most "
                + $"{100 * proof.Gap:0.0} % of the dominated volume open.");

    private static string Evaluations(long count) => FormattableString.Invariant($"{count} {(count == 1 ? "evaluation" : "evaluations")}");
}
