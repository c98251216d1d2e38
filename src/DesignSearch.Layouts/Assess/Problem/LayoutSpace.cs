using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Search;

namespace DesignSearch.Layouts.Assess.Problem;

/// <summary>The choices of a scenario as variables of a search: a part is a category, a number is ordered.</summary>
public sealed class LayoutSpace
{
    private readonly Scenario scenario;

    /// <summary>Makes the variables.</summary>
    public LayoutSpace(Scenario scenario)
    {
        this.scenario = scenario;
        Variables = [.. scenario.Choices.Select(Variable)];
    }

    /// <summary>One variable a choice, in the order of <see cref="ChoiceTable.All"/>.</summary>
    public IReadOnlyList<Variable> Variables { get; }

    /// <summary>The layout at a point.</summary>
    /// <param name="point">One level a variable.</param>
    public Layout At(ReadOnlySpan<double> point)
    {
        var values = new ChoiceValue[point.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = scenario.Choices[i].Levels[(int)point[i]];
        return Layout.Of(values, scenario.Catalogue);
    }

    private Variable Variable(VariedChoice varied)
    {
        var awake = varied.Choice.AwakeWhen;
        return new Variable
        {
            Name = varied.Choice.Key,
            Kind = varied.Choice.Kind == ChoiceKind.Part ? VariableKind.Category : VariableKind.Ordered,
            Levels = varied.Levels.Count,
            AwakeWhen = awake is null ? null : point => awake(new PointReader(scenario, point), scenario.Catalogue),
        };
    }

    private readonly struct PointReader(Scenario scenario, IReadOnlyList<double> point) : IChoiceReader
    {
        public ChoiceValue this[string key]
        {
            get
            {
                var i = ChoiceTable.IndexOf(key);
                return scenario.Choices[i].Levels[(int)point[i]];
            }
        }
    }
}
