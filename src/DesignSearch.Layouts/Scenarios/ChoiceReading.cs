using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads the values of choices from a scenario or a layout file.</summary>
internal static class ChoiceReading
{
    private const int MostLevels = 200;

    /// <summary>Reads one value; a fault is reported and the resting value returned.</summary>
    public static ChoiceValue One(TomlTable table, Choice choice, TomlValue value, Catalogue catalogue) => choice switch
    {
        PartChoice part => Part(table, part, value, catalogue),
        NumberChoice number => Number(table, number, value),
        _ => choice.AtRest,
    };

    /// <summary>Reads the levels of a choice: one value, a list, or a range { from, to, step }; silence means everything usual.</summary>
    public static VariedChoice Levels(TomlTable table, Choice choice, Catalogue catalogue, ChoiceGround ground)
    {
        if (table.Find(choice.Key) is not { } value)
            return new(choice, choice.Usual(catalogue, ground));
        var levels = value.Kind switch
        {
            TomlKind.List when value.Items.Count == 0 => Refuse(table, value, choice, "at least one value"),
            TomlKind.List when value.Items.Count > MostLevels => Refuse(table, value, choice, FormattableString.Invariant($"at most {MostLevels} values")),
            TomlKind.List => [.. value.Items.Select(item => One(table, choice, item, catalogue)).Distinct()],
            TomlKind.Table when choice is NumberChoice number => Range(value.Table!, number),
            _ => [One(table, choice, value, catalogue)],
        };
        return new(choice, choice is NumberChoice ? [.. levels.OrderBy(l => l.Number)] : levels);
    }

    /// <summary>Reads one value from the text of a cell.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="text">The text.</param>
    /// <param name="catalogue">Parts that may be named.</param>
    /// <returns>The value; where it cannot be one, null and what was expected.</returns>
    public static (ChoiceValue? Value, string Expected) OfText(Choice choice, string text, Catalogue catalogue) => choice switch
    {
        PartChoice part => Named(part, text, catalogue) is { } value ? (value, "") : (null, Expected(part, text, catalogue)),
        NumberChoice number when PlainNumber.TryRead(text, out var value) && Suits(number, value) => (ChoiceValue.Of(value), ""),
        NumberChoice number => (null, Expected(number)),
        _ => (choice.AtRest, ""),
    };

    private static ChoiceValue Part(TomlTable table, PartChoice choice, TomlValue value, Catalogue catalogue)
    {
        if (value.Kind == TomlKind.Text && Named(choice, value.Text, catalogue) is { } named)
            return named;
        if (value.Kind != TomlKind.Text || !catalogue.MayLack(value.Text, choice.Kind))
            table.Fault(value, Expected(choice, value.Text, catalogue));
        return choice.AtRest;
    }

    private static ChoiceValue? Named(PartChoice choice, string text, Catalogue catalogue)
    {
        if (text == ChoiceValue.NoneWord && choice.MayBeNone)
            return ChoiceValue.None;
        if (text == ChoiceValue.Cheapest.Id && choice.Role is not null)
            return ChoiceValue.Cheapest;
        return catalogue.TryFind<IPart>(text, out var part) && choice.Offers(part) ? ChoiceValue.Of(part) : null;
    }

    private static string Expected(PartChoice choice, string text, Catalogue catalogue)
    {
        var also = choice.MayBeNone ? " or \"none\"" : choice.Role is not null ? " or \"cheapest\"" : "";
        var near = NearWord.Hint(text, catalogue.All.Where(choice.Offers).Select(p => p.Id));
        return $"the id of a {choice.Kind.Name.Replace('-', ' ')} in the catalogue{also} for '{choice.Key}'{near}";
    }

    private static ChoiceValue Number(TomlTable table, NumberChoice choice, TomlValue value)
    {
        if (value.Kind is TomlKind.Whole or TomlKind.Real && Suits(choice, value.Number))
            return ChoiceValue.Of(value.Number);
        table.Fault(value, Expected(choice));
        return choice.AtRest;
    }

    private static bool Suits(NumberChoice choice, double value) =>
        value >= choice.Min && value <= choice.Max && (!choice.Whole || value == Math.Floor(value));

    private static string Expected(NumberChoice choice)
    {
        var what = choice.Whole ? "a whole number" : "a number";
        return FormattableString.Invariant($"{what} from {choice.Min} to {choice.Max} {choice.Unit} for '{choice.Key}'");
    }

    private static List<ChoiceValue> Refuse(TomlTable table, TomlValue value, Choice choice, string expected)
    {
        table.Fault(value, $"{expected} for '{choice.Key}'");
        return [choice.AtRest];
    }

    private static List<ChoiceValue> Range(TomlTable range, NumberChoice choice)
    {
        var from = range.Number("from", choice.Min, choice.Max, choice.Unit);
        var to = range.Number("to", choice.Min, choice.Max, choice.Unit);
        var step = range.Number("step", 1e-3, Math.Max(1e-3, choice.Max - choice.Min), choice.Unit);
        range.ReportUnknown();
        var count = Math.Floor((to - from) / step + 1e-9) + 1;
        if (to < from || count > MostLevels)
            range.FaultAt("to", FormattableString.Invariant($"{to}"), FormattableString.Invariant($"'to' not below 'from', and at most {MostLevels} steps"));
        else if (choice.Whole && (from != Math.Floor(from) || step != Math.Floor(step)))
            range.FaultAt("step", FormattableString.Invariant($"{step}"), $"whole numbers for '{choice.Key}'");
        else
            return [.. Enumerable.Range(0, (int)count).Select(i => ChoiceValue.Of(Math.Round(from + i * step, 9)))];
        return [choice.AtRest];
    }
}
