using DesignSearch.Files;

namespace DesignSearch.Runs.Searching;

/// <summary>
/// How far a whole run is, and not only its search: each phase has its share of the time, roughly as measured on the examples with two threads. What is left is then
/// told for all that is still to come.
/// </summary>
/// <param name="progress">Told how far it is; null for silence.</param>
/// <param name="proves">Whether the first answer will be proved.</param>
internal sealed class SearchPhases(IProgress<RunProgress>? progress, bool proves)
{
    private const double UpToComparison = 0.7;
    private const double UpToProof = 0.85;
    private const double UpToSureness = 0.93;
    private const double UpToWeighing = 0.98;
    private readonly double searching = proves ? 0.3 : 0.4;
    private long evaluations;
    private double done;

    /// <summary>The search itself.</summary>
    /// <param name="share">Share of it that is done [0…1].</param>
    /// <param name="simulated">Layouts simulated.</param>
    /// <param name="best">The best so far, in words.</param>
    /// <param name="brief">The same in few.</param>
    public void Search(double share, long simulated, string best, string brief)
    {
        evaluations = simulated;
        Tell(searching * share, best, brief);
    }

    /// <summary>The proof; how long it takes nobody knows, so each report takes a little of what is left of its share.</summary>
    public void Prove(string what, string brief)
    {
        const double Step = 0.02;
        var begun = Math.Max(done, UpToComparison);
        Tell(begun + Step * Math.Max(0, UpToProof - begun), what, brief);
    }

    /// <summary>The comparison of the ways.</summary>
    /// <param name="share">Share of the ways that were searched [0…1].</param>
    public void Compare(double share) => Tell(searching + ((UpToComparison - searching) * share), SearchWords.Comparing, SearchWords.Comparing);

    /// <summary>How sure the first choice is.</summary>
    public void BeSure() => Tell(UpToProof, SearchWords.BeingSure, SearchWords.BeingSure);

    /// <summary>What things are worth.</summary>
    public void Weigh() => Tell(UpToSureness, SearchWords.Weighing, SearchWords.Weighing);

    /// <summary>Lists, pictures and page.</summary>
    public void Write() => Tell(UpToWeighing, SearchWords.Writing, SearchWords.Writing);

    private void Tell(double share, string words, string brief)
    {
        done = Math.Max(done, Math.Min(share, 1));
        progress?.Report(new RunProgress(done, evaluations, VisibleText.Of(words)) { Brief = VisibleText.Of(brief) });
    }
}
