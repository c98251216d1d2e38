using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>Asks questions and reads a line for each, from a person or from a file.</summary>
/// <param name="input">Where answers come from.</param>
/// <param name="output">Where questions go.</param>
/// <param name="isTyped">True where a person types, who can be asked again.</param>
/// <param name="columns">Columns of the terminal.</param>
/// <param name="cancel">Ends the waiting.</param>
internal sealed class Asker(TextReader input, TextWriter output, bool isTyped, int columns, CancellationToken cancel)
{
    private int line;

    /// <summary>Says something, wrapped.</summary>
    public void Say(string text, int indent = 0)
    {
        foreach (var part in Wrapped.Lines(text, columns, indent))
            output.WriteLine(part);
    }

    /// <summary>Says a line as it is.</summary>
    public void Draw(string text) => output.WriteLine(text);

    /// <summary>Asks until there is an answer.</summary>
    /// <param name="usual">What an empty line means.</param>
    /// <param name="take">Takes an answer; returns what was expected where it is none.</param>
    /// <param name="unknown">Called where the answer is not known.</param>
    /// <exception cref="InputException">The answers ended, or one that nobody can be asked again about was none.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public void Ask(string usual, Func<string, string?> take, Action unknown)
    {
        while (true)
        {
            output.Write($"  [{VisibleText.Of(usual)}] > ");
            output.Flush();
            if (Line() is not { } answer)
                throw new InputException(new InputFault("standard input", line + 1, 0, "", "an answer; the input ended here"));
            line++;
            if (!isTyped)
                output.WriteLine(answer);
            if (answer.Trim() == "?")
            {
                unknown();
                return;
            }

            if (take(answer) is not { } expected)
                return;
            if (!isTyped)
                throw new InputException(new InputFault("standard input", line, 0, answer.Trim(), expected));
            Say($"  That is not {expected}.");
        }
    }

    // A read that is waited for can be left; the process ends without it.
    private string? Line()
    {
        var read = Task.Run(input.ReadLine, CancellationToken.None);
        try
        {
            read.Wait(cancel);
        }
        catch (AggregateException e) when (e.InnerException is IOException or ObjectDisposedException)
        {
            return null;
        }

        return read.Result;
    }
}
