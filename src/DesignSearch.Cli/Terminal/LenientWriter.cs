using System.Text;

namespace DesignSearch.Cli.Terminal;

/// <summary>Passes text on and lets go what cannot be written: a log on a full disk must not end a search.</summary>
/// <param name="inner">Where the text goes.</param>
public sealed class LenientWriter(TextWriter inner) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Try(() => inner.Write(value));

    /// <inheritdoc/>
    public override void Write(string? value) => Try(() => inner.Write(value));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    /// <inheritdoc/>
    public override void Flush() => Try(inner.Flush);

    private static void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            // There is nowhere left to complain to.
        }
    }
}
