namespace DesignSearch.Files;

/// <summary>Gathers every fault of one reading, so that the person hears of all of them at once.</summary>
public sealed class FaultList
{
    private readonly List<InputFault> faults = [];

    /// <summary>The faults so far, in the order they were found.</summary>
    public IReadOnlyList<InputFault> Faults => faults;

    /// <summary>True when nothing is wrong so far.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>Adds a fault; see <see cref="InputFault"/> for the meaning of each part.</summary>
    public void Add(string file, int line, int column, string value, string expected) => faults.Add(new(file, line, column, value, expected));

    /// <summary>Adds faults found elsewhere.</summary>
    public void AddRange(IEnumerable<InputFault> more) => faults.AddRange(more);

    /// <summary>Throws once if anything was found.</summary>
    /// <exception cref="InputException">With every fault, sorted by file, line and column.</exception>
    public void ThrowIfAny()
    {
        if (faults.Count > 0)
            throw new InputException([.. faults.OrderBy(f => f.File, StringComparer.Ordinal).ThenBy(f => f.Line).ThenBy(f => f.Column)]);
    }
}
