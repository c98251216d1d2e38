using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Journal;

/// <summary>What a journal was begun with; a search can only be taken up with the same.</summary>
/// <param name="ProgramVersion">Version of the program.</param>
/// <param name="Seed">Seed.</param>
/// <param name="BlockSize">Layouts proposed at a time.</param>
/// <param name="Inputs">Every file that was read, with its hash.</param>
/// <param name="GoesThroughAll">
/// Whether the budget covered every layout there is, so that they were gone through in order. All else that a search proposes does not
/// hang on its budget: it may be taken up with a larger one and then ends like a search that had it from the start.
/// </param>
public sealed record JournalHead(string ProgramVersion, ulong Seed, int BlockSize, IReadOnlyList<StoredInput> Inputs, bool GoesThroughAll = false)
{
    /// <summary>Names each difference to another head, in plain words; empty when they agree.</summary>
    public IReadOnlyList<string> DifferencesTo(JournalHead other)
    {
        var found = new List<string>();
        if (ProgramVersion != other.ProgramVersion)
            found.Add($"the program was version {ProgramVersion}, now {other.ProgramVersion}");
        if (Seed != other.Seed)
            found.Add(FormattableString.Invariant($"the seed was {Seed}, now {other.Seed}"));
        if (BlockSize != other.BlockSize)
            found.Add(FormattableString.Invariant($"the block size was {BlockSize}, now {other.BlockSize}"));
        if (GoesThroughAll != other.GoesThroughAll)
            found.Add(
                GoesThroughAll
                    ? "--evaluations then covered every layout there is, now it covers some only"
                    : "--evaluations then covered some layouts only, now it covers every one there is");
        foreach (var input in Inputs.Where(i => !other.Inputs.Contains(i)))
            found.Add(other.Inputs.Any(o => o.File == input.File) ? $"'{input.File}' has changed" : $"'{input.File}' is no longer read");
        found.AddRange(other.Inputs.Where(o => Inputs.All(i => i.File != o.File)).Select(o => $"'{o.File}' was not read then"));
        return found;
    }
}
