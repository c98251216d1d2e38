namespace DesignSearch.Runs.Folder;

/// <summary>The example runs that came with the program: cases all invented, to look at and to copy.</summary>
public static class ExampleRuns
{
    private static string Home => Path.Combine(AppContext.BaseDirectory, "runs");

    /// <summary>Their names, sorted; none where the program lies alone.</summary>
    public static IReadOnlyList<string> Names => !Directory.Exists(Home) ? [] :
    [
        .. Directory.EnumerateDirectories(Home).Where(d => File.Exists(new RunFolder(d).Scenario)).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal),
    ];

    /// <summary>The folder of one.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    public static RunFolder Of(string name) => new(Path.Combine(Home, name));
}
