using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>One thing that can be chosen: a part or a number, and when it matters at all.</summary>
public sealed record Choice
{
    /// <summary>Key in [choices] and in layout files.</summary>
    public required string Key { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Title { get; init; }

    /// <summary>A part or a number.</summary>
    public required ChoiceKind Kind { get; init; }

    /// <summary>Parts: the kind of part. Empty for a number.</summary>
    public string PartKind { get; init; } = "";

    /// <summary>Small parts: the task; null for other kinds. Silence then means the cheapest that serves, <see cref="ChoiceValue.Cheapest"/>.</summary>
    public SmallPartRole? Role { get; init; }

    /// <summary>Parts: true when "none" may be chosen.</summary>
    public bool MayBeNone { get; init; } = true;

    /// <summary>Numbers: least value.</summary>
    public double Min { get; init; }

    /// <summary>Numbers: greatest value.</summary>
    public double Max { get; init; }

    /// <summary>Numbers: only whole ones.</summary>
    public bool Whole { get; init; }

    /// <summary>Numbers: unit for messages.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Numbers: what a layout file means when it is silent.</summary>
    public double Standard { get; init; }

    /// <summary>Numbers: what is tried when the scenario is silent.</summary>
    public IReadOnlyList<double> Usual { get; init; } = [];

    /// <summary>Numbers: whether <see cref="Standard"/> and <see cref="Usual"/> count from the frost limit [K].</summary>
    public bool AboveLimit { get; init; }

    /// <summary>Parts: whether a part of the catalogue may be chosen here.</summary>
    public bool Offers(IPart part) => part.Kind == PartKind && (Role is null || part is SmallPart small && small.Role == Role && small.Volts < SupplyPlan.MainsVolts);

    /// <summary>True when the choice matters for what was chosen before it; null means always.</summary>
    public Func<IChoiceReader, Catalogue, bool>? AwakeWhen { get; init; }
}
