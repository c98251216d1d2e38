using System.Text;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>A stream of this process that takes text of any origin: what a terminal would obey is made visible, and a failure names the stream.</summary>
/// <param name="inner">Where the text goes.</param>
/// <param name="name">How a person calls it.</param>
public sealed class VisibleWriter(TextWriter inner, string name) : TextWriter
{
    // What is written piece by piece has its line ends in it; a line written whole has none.
    private const string LineEnds = "\r\n";

    /// <summary>Such a stream over another.</summary>
    public static TextWriter Over(TextWriter inner, string name) => new VisibleWriter(inner, name);

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Try(() => inner.Write(VisibleText.Of(value.ToString(), LineEnds)));

    /// <inheritdoc/>
    public override void Write(string? value) => Try(() => inner.Write(VisibleText.Of(value ?? "", LineEnds)));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Try(() => inner.WriteLine(VisibleText.Of(value ?? "")));

    /// <inheritdoc/>
    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new IOException($"{name}: {e.Message}", e);
        }
    }
}
