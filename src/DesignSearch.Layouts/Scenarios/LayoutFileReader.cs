using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads a layout file: TOML with the keys of a scenario's [choices], one value each.</summary>
public static class LayoutFileReader
{
    /// <summary>Reads a layout. A key that is absent means "left out" for a part and the standard value for a number.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <param name="shownAs">How messages name it.</param>
    /// <param name="scenario">Parts that may be named, choices there are, and the ground of numbers that the file is silent about.</param>
    /// <param name="faults">Takes every fault.</param>
    public static Layout Read(string path, string shownAs, Scenario scenario, FaultList faults)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var (set, ground) = (scenario.Systems.Choices, new ChoiceGround(scenario.Place.LatitudeDeg, scenario.Greenhouse.FrostLimitC));
        var file = TomlReader.ReadFile(path, shownAs, faults);
        if (!faults.IsEmpty && !file.Keys.Any())
            return Layout.Bare(set);
        file.Whole("format", LayoutFile.Format, LayoutFile.Format);
        var choices = file.Table("choices", required: true);
        file.ReportUnknown();
        if (choices is null)
            return Layout.Bare(set);
        var values = set.All.Select(c => choices.Find(c.Key) is { } found ? ChoiceReading.One(choices, c, found, scenario.Catalogue) : c.Silent(ground)).ToList();
        choices.ReportUnknown();
        var layout = Layout.Of(values, set);
        foreach (var (part, expected) in Missing(layout))
            choices.FaultAt(part.Key, choices.Has(part.Key) ? ChoiceValue.NoneWord : "", expected);
        return layout;
    }

    /// <summary>Parts that a layout must have for what it has, and has not, each with what was expected.</summary>
    internal static IEnumerable<(PartChoice Part, string Expected)> Missing(Layout layout)
    {
        foreach (var (choice, value) in layout.Awake)
        {
            if (choice is not PartChoice { MayBeNone: false } part || !value.IsNone)
                continue;
            var because = part.Under is { } root ? $", since this layout has a {root.Title}" : "";
            yield return (part, $"a part of kind {part.Kind.Name} for '{part.Key}'{because}");
        }
    }
}
