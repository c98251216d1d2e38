namespace DesignSearch.Files;

/// <summary>Gathers every fault of one reading, so that the person hears of all of them at once.</summary>
public sealed class FaultList
{
    /// <summary>So many faults are kept; the rest are only counted.</summary>
    public const int MostKept = 100;

    private readonly List<InputFault> faults = [];

    /// <summary>The first faults, in the order they were found, <see cref="MostKept"/> at most.</summary>
    public IReadOnlyList<InputFault> Faults => faults;

    /// <summary>How many there are, with those that were only counted.</summary>
    public int Count { get; private set; }

    /// <summary>True when nothing is wrong so far.</summary>
    public bool IsEmpty => Count == 0;

    /// <summary>Adds a fault; see <see cref="InputFault"/> for the meaning of each part.</summary>
    public void Add(string file, int line, int column, string value, string expected) => Add(new(file, line, column, value, expected));

    /// <summary>Adds that something is not there which must be.</summary>
    /// <param name="file">The file.</param>
    /// <param name="line">Line of the table or header that lacks it.</param>
    /// <param name="expected">What is missing, its name first.</param>
    /// <returns>The fault, to be taken back where another one explains it.</returns>
    public InputFault AddMissing(string file, int line, string expected)
    {
        var fault = new InputFault(file, line, 0, "", expected) { IsMissing = true };
        Add(fault);
        return fault;
    }

    /// <summary>Takes a fault back, since it follows from another that is told.</summary>
    public void TakeBack(InputFault fault)
    {
        if (faults.Remove(fault))
            Count--;
    }

    /// <summary>Adds the faults of a reading of its own.</summary>
    public void AddRange(InputException other)
    {
        foreach (var fault in other.Faults.Except(faults))
            Add(fault);
        Count += other.Untold;
    }

    /// <summary>Throws once if anything was found.</summary>
    /// <exception cref="InputException">With every fault kept, sorted by file, line and column.</exception>
    public void ThrowIfAny()
    {
        if (Count > 0)
            throw new InputException([.. faults.OrderBy(f => f.File, StringComparer.Ordinal).ThenBy(f => f.Line).ThenBy(f => f.Column)], Count - faults.Count);
    }

    private void Add(InputFault fault)
    {
        Count++;
        if (faults.Count < MostKept)
            faults.Add(fault);
    }
}
