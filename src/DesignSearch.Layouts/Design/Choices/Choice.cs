using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>One thing that can be chosen, and when it matters at all. Each is one object of the system that owns it; two are the same only when they are one.</summary>
/// <param name="key">Key in [choices] and in layout files.</param>
/// <param name="title">What it is, in plain words.</param>
public abstract class Choice(string key, string title)
{
    /// <summary>Key in [choices] and in layout files.</summary>
    public string Key => key;

    /// <summary>What it is, in plain words.</summary>
    public string Title => title;

    /// <summary>The part without which this choice sleeps; null where it stands by itself. It comes earlier in the list of choices.</summary>
    public PartChoice? Under { get; init; }

    /// <summary>What else must hold of earlier choices for this one to matter; null for nothing.</summary>
    public Func<IChoices, bool>? Also { get; init; }

    /// <summary>True where it matters in every layout.</summary>
    public bool IsAlwaysAwake => Under is null && Also is null;

    /// <summary>True for a part that can be added or left out by itself.</summary>
    public virtual bool IsRoot => false;

    /// <summary>What it holds while it sleeps.</summary>
    public abstract ChoiceValue AtRest { get; }

    /// <summary>What a layout file means that is silent about it.</summary>
    /// <param name="ground">Latitude and frost limit.</param>
    public abstract ChoiceValue Silent(ChoiceGround ground);

    /// <summary>What is tried where a scenario is silent about it.</summary>
    /// <param name="catalogue">Parts that can be bought.</param>
    /// <param name="ground">Latitude and frost limit.</param>
    public abstract IReadOnlyList<ChoiceValue> Usual(Catalogue catalogue, ChoiceGround ground);

    /// <summary>A value in words: the name of a part, or a number with its unit.</summary>
    /// <param name="value">A value of this choice.</param>
    public abstract string Words(ChoiceValue value);

    /// <summary>The same beside its title, to tell two layouts apart.</summary>
    /// <param name="value">A value of this choice.</param>
    public abstract string TitledWords(ChoiceValue value);

    /// <summary>Whether it matters for what was chosen before it.</summary>
    /// <param name="choices">The choices made so far.</param>
    public bool IsAwake(IChoices choices) => (Under is null || choices.Has(Under)) && (Also is null || Also(choices));
}
