namespace DesignSearch.Cli.Terminal;

/// <summary>What the error stream of this process is written to.</summary>
public static class ErrorTerminal
{
    private const int UsualWidth = 80;

    /// <summary>
    /// True in a terminal that can rewrite a line. Output that goes to a file or a pipe, <c>TERM</c> unset or "dumb", and a build
    /// machine (<c>CI</c> set) get plain lines. The program writes no colours anywhere, so <c>NO_COLOR</c> is always obeyed.
    /// </summary>
    public static bool CanRewrite =>
        !Console.IsErrorRedirected
        && (OperatingSystem.IsWindows() || Environment.GetEnvironmentVariable("TERM") is not (null or "" or "dumb"))
        && Environment.GetEnvironmentVariable("CI") is null;

    /// <summary>Columns; 80 where nobody can say.</summary>
    public static int Width()
    {
        try
        {
            return Console.WindowWidth is > 1 and var width ? width : UsualWidth;
        }
        catch (Exception e) when (e is IOException or PlatformNotSupportedException)
        {
            return UsualWidth;
        }
    }
}
