namespace DesignSearch.Files;

/// <summary>Thrown once, with every fault found, when something a person wrote cannot be used. The command line prints the faults and ends with code 2.</summary>
/// <param name="faults">At least one fault, in the order in which they should be read.</param>
public sealed class InputException(IReadOnlyList<InputFault> faults) : Exception(string.Join('\n', faults))
{
    /// <summary>Creates the exception for a single fault.</summary>
    /// <param name="fault">The fault.</param>
    public InputException(InputFault fault) : this([fault])
    {
    }

    /// <summary>Every fault that was found.</summary>
    public IReadOnlyList<InputFault> Faults { get; } = faults;
}
