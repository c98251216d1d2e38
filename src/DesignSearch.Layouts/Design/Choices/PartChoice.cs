using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>A choice of a part of the catalogue.</summary>
/// <param name="key">Key in [choices] and in layout files.</param>
/// <param name="title">What it is, in plain words.</param>
/// <param name="kind">The kind of part.</param>
public abstract class PartChoice(string key, string title, PartKind kind) : Choice(key, title)
{
    /// <summary>The kind of part.</summary>
    public PartKind Kind => kind;

    /// <summary>Small parts: the task; null for other kinds. Silence then means the cheapest that serves, <see cref="ChoiceValue.Cheapest"/>.</summary>
    public SmallPartRole? Role { get; init; }

    /// <summary>True when "none" may be chosen.</summary>
    public bool MayBeNone { get; init; } = true;

    /// <summary>True for a part by which a person tells layouts apart.</summary>
    public bool NamesTheLayout { get; init; }

    /// <summary>What is built with it, for instance " with mount and tank"; empty for nothing.</summary>
    public string ComesWith { get; init; } = "";

    /// <inheritdoc/>
    public override bool IsRoot => IsAlwaysAwake;

    /// <inheritdoc/>
    public override ChoiceValue AtRest => ChoiceValue.None;

    /// <summary>Whether a part of the catalogue may be chosen here.</summary>
    public bool Offers(IPart part) => part.Kind == kind && (Role is null || (part is SmallPart small && small.Role == Role && small.Volts < SupplyPlan.MainsVolts));

    /// <inheritdoc/>
    public override ChoiceValue Silent(ChoiceGround ground) => Role is null ? ChoiceValue.None : ChoiceValue.Cheapest;

    /// <inheritdoc/>
    public override IReadOnlyList<ChoiceValue> Usual(Catalogue catalogue, ChoiceGround ground) => Role is not null
        ? [ChoiceValue.Cheapest]
        : [.. MayBeNone ? [ChoiceValue.None] : Array.Empty<ChoiceValue>(), .. catalogue.All.Where(Offers).Select(ChoiceValue.Of)];

    /// <inheritdoc/>
    public override string Words(ChoiceValue value) => value.Part?.Name ?? value.Id;

    /// <inheritdoc/>
    public override string TitledWords(ChoiceValue value) => value.IsNone ? $"no {Title}" : $"{Title}: {Words(value)}";
}
