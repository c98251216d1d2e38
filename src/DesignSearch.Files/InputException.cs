namespace DesignSearch.Files;

/// <summary>Thrown once, with every fault found, when something a person wrote cannot be used. The command line prints the faults and ends with code 2.</summary>
/// <param name="faults">At least one fault, in the order in which they should be read.</param>
/// <param name="untold">How many more were found and only counted.</param>
public sealed class InputException(IReadOnlyList<InputFault> faults, int untold = 0) : Exception(string.Join('\n', faults))
{
    /// <summary>Creates the exception for a single fault.</summary>
    /// <param name="fault">The fault.</param>
    public InputException(InputFault fault) : this([fault])
    {
    }

    /// <summary>The faults that are told.</summary>
    public IReadOnlyList<InputFault> Faults { get; } = faults;

    /// <summary>How many more were found and only counted.</summary>
    public int Untold { get; } = untold;
}
