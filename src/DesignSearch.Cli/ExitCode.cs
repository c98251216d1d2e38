namespace DesignSearch.Cli;

/// <summary>How the program ends; part of its contract.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Usage or input at fault.</summary>
    public const int BadInput = 2;

    /// <summary>The search ended and nothing holds the frost limit.</summary>
    public const int NothingHolds = 3;

    /// <summary>A file or folder cannot be written.</summary>
    public const int CannotWrite = 4;

    /// <summary>A fault of the program itself.</summary>
    public const int Internal = 70;

    /// <summary>The terminal was closed; the partial result is kept.</summary>
    public const int HungUp = 129;

    /// <summary>Stopped by Ctrl+C; the partial result is kept.</summary>
    public const int Interrupted = 130;

    /// <summary>Stopped by a request to end; the partial result is kept.</summary>
    public const int Terminated = 143;
}
