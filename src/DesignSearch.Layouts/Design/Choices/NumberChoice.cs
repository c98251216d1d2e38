using System.Globalization;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>A choice of a number.</summary>
/// <param name="key">Key in [choices] and in layout files.</param>
/// <param name="title">What it is, in plain words.</param>
/// <param name="unit">Unit for messages.</param>
/// <param name="min">Least value.</param>
/// <param name="max">Greatest value.</param>
public sealed class NumberChoice(string key, string title, string unit, double min, double max) : Choice(key, title)
{
    /// <summary>Unit for messages.</summary>
    public string Unit => unit;

    /// <summary>Least value.</summary>
    public double Min => min;

    /// <summary>Greatest value.</summary>
    public double Max => max;

    /// <summary>Only whole ones.</summary>
    public bool Whole { get; init; }

    /// <summary>True where it says how many there are of the part that it sleeps without.</summary>
    public bool CountsParts { get; init; }

    /// <summary>What a layout file means when it is silent.</summary>
    public double Standard { get; init; }

    /// <summary>What is tried when the scenario is silent; empty for <see cref="Standard"/> alone.</summary>
    public IReadOnlyList<double> Tried { get; init; } = [];

    /// <summary>Whether <see cref="Standard"/> and <see cref="Tried"/> count from the frost limit [K].</summary>
    public bool AboveLimit { get; init; }

    /// <summary>The standard value where it hangs on the place; null where it does not.</summary>
    public Func<ChoiceGround, double>? StandardAt { get; init; }

    /// <inheritdoc/>
    public override ChoiceValue AtRest => ChoiceValue.Of(0);

    /// <inheritdoc/>
    public override ChoiceValue Silent(ChoiceGround ground) => ChoiceValue.Of(StandardAt?.Invoke(ground) ?? Counted(Standard, ground));

    /// <inheritdoc/>
    public override IReadOnlyList<ChoiceValue> Usual(Catalogue catalogue, ChoiceGround ground) =>
        Tried.Count == 0 ? [Silent(ground)] : [.. Tried.Select(value => Counted(value, ground)).Distinct().Select(ChoiceValue.Of)];

    /// <inheritdoc/>
    public override string Words(ChoiceValue value) => Written.Sentence($"{value.Number:0.##} {unit}");

    /// <inheritdoc/>
    public override string TitledWords(ChoiceValue value) => $"{Title} {value.Number.ToString("R", CultureInfo.InvariantCulture)} {unit}".TrimEnd();

    private double Counted(double value, ChoiceGround ground) => AboveLimit ? Math.Clamp(ground.FrostLimitC + value, min, max) : value;
}
