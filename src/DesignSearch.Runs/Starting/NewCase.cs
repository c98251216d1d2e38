using System.Reflection;
using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Starting;

/// <summary>A case that is being asked for, question by question. What stands in the folder already is the usual answer, and what is not asked for stays.</summary>
public sealed class NewCase
{
    private const string Template = "DesignSearch.Runs.Starting.blank-scenario.toml";

    private NewCase(string text, bool isNew, string name)
    {
        Scenario = new(text);
        Standing = TomlReader.ReadText(text, "", new FaultList());
        (IsNew, Name) = (isNew, name);
    }

    /// <summary>The questions, in order.</summary>
    public static IReadOnlyList<Question> Questions => CaseQuestions.All;

    /// <summary>True where there was no scenario yet.</summary>
    public bool IsNew { get; }

    /// <summary>The scenario as answered so far.</summary>
    public string Text => Scenario.ToString();

    /// <summary>The text that answers change.</summary>
    internal ScenarioText Scenario { get; }

    /// <summary>What stood there when it was begun.</summary>
    internal TomlTable Standing { get; }

    /// <summary>The folder's name, for a case without one.</summary>
    internal string Name { get; }

    /// <summary>Answers that later questions hang on.</summary>
    internal CaseFacts Facts { get; } = new();

    /// <summary>Begins with what lies in a folder, or with nothing.</summary>
    /// <param name="folder">The run; it need not be there.</param>
    /// <exception cref="InputException">What lies there cannot be read.</exception>
    public static NewCase Of(RunFolder folder)
    {
        var name = Path.GetFileName(Path.GetFullPath(folder.Path));
        if (!File.Exists(folder.Scenario))
            return new(Blank(), isNew: true, name);
        var faults = new FaultList();
        TomlReader.ReadFile(folder.Scenario, folder.Scenario, faults);
        faults.ThrowIfAny();
        return new(File.ReadAllText(folder.Scenario).TrimStart('\uFEFF'), isNew: false, name);
    }

    /// <summary>Whether a question is asked after the answers before it.</summary>
    public bool IsAsked(Question question) => question.IsAsked(this);

    /// <summary>What an empty line means: what stands there, else the usual answer.</summary>
    public string Usual(Question question) => (IsNew ? null : question.Standing(this)) ?? question.Usual(this);

    /// <summary>Takes an answer.</summary>
    /// <param name="question">The question.</param>
    /// <param name="answer">What was typed; empty for what <see cref="Usual"/> says.</param>
    /// <returns>What was expected where it is no answer; else null.</returns>
    public string? Answer(Question question, string answer)
    {
        var isUsual = answer.Trim().Length == 0 || answer.Trim() == Usual(question);
        // What stands there is not written anew: it may say more than an answer can.
        var wrong = question.Take(isUsual && !IsNew ? Aside() : this, isUsual ? Usual(question) : answer.Trim());
        if (wrong is null && !isUsual)
            Scenario.Unmark(question.Line.Table, question.Line.Key, QuestionWords.Guessed);
        return wrong;
    }

    /// <summary>Takes the usual answer for one that is not known, and marks the line.</summary>
    public void Guess(Question question)
    {
        Answer(question, "");
        if (IsNew)
            Scenario.Remark(question.Line.Table, question.Line.Key, QuestionWords.Guessed);
    }

    /// <summary>A number that stands there already.</summary>
    internal double? Number(string table, string key) => Value(table, key) is { Kind: TomlKind.Whole or TomlKind.Real } value ? value.Number : null;

    /// <summary>Words that stand there already.</summary>
    internal string? Words(string table, string key) => Value(table, key) is { Kind: TomlKind.Text } value ? value.Text : null;

    /// <summary>True or false as it stands there already.</summary>
    internal bool Says(string table, string key) => Value(table, key) is { Kind: TomlKind.Flag, Flag: true };

    private TomlValue? Value(string table, string key) => (table.Length == 0 ? Standing : Standing.Find(table)?.Table)?.Find(key);

    // Answers go to the facts only.
    private NewCase Aside() => new(this);

    private NewCase(NewCase other)
    {
        (Scenario, Standing, IsNew, Name, Facts) = (new(""), other.Standing, other.IsNew, other.Name, other.Facts);
    }

    private static string Blank()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Template)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
