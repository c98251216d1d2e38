using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Tests;

/// <summary>Choices by the keys that a file would name.</summary>
internal static class Named
{
    public static Choice Choice(this Scenario scenario, string key) => scenario.Systems.Choices.All.Single(c => c.Key == key);

    public static ChoiceValue Value(this Scenario scenario, object value) => value switch
    {
        ChoiceValue.NoneWord => ChoiceValue.None,
        "cheapest" => ChoiceValue.Cheapest,
        string id => ChoiceValue.Of(scenario.Catalogue.TryFind<IPart>(id, out var part) ? part : throw new ArgumentException(id)),
        _ => ChoiceValue.Of(Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture)),
    };

    public static Layout With(this Layout layout, Scenario scenario, string key, object value) => layout.With(scenario.Choice(key), scenario.Value(value));
}
