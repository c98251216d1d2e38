using System.CommandLine;

namespace DesignSearch.Cli.Commands;

/// <summary>completions: the lines that teach a shell to complete the commands.</summary>
internal sealed class CompletionsCommand : Command
{
    // Both ask the program itself what fits at the cursor, so that they never fall behind it. What is left open is a file name.
    private const string Bash = """
        _designsearch() {
            local IFS=$'\n'
            COMPREPLY=($(compgen -W "$(designsearch "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
        }
        complete -o default -F _designsearch designsearch
        """;

    private const string PowerShell = """
        Register-ArgumentCompleter -Native -CommandName designsearch -ScriptBlock {
            param($word, $line, $cursor)
            designsearch "[suggest:$cursor]" "$line".PadRight($cursor) 2>$null |
                Where-Object { $_ -like "$word*" } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
        }
        """;

    public CompletionsCommand(Session session) : base("completions", "Prints what a shell needs to complete commands, options and runs by the Tab key.")
    {
        var shell = new Argument<string>("SHELL") { HelpName = "SHELL", Description = "bash or powershell." };
        shell.AcceptOnlyFromAmong("bash", "powershell");
        Arguments.Add(shell);
        SetAction(parsed => session.Guarded(parsed, "", _ =>
        {
            session.Out.Write((parsed.GetValue(shell) == "bash" ? Bash : PowerShell).ReplaceLineEndings("\n") + "\n");
            return ExitCode.Done;
        }));
    }
}
