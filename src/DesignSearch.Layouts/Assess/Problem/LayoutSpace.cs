using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
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

    /// <summary>One variable a choice, in the order of the systems' choices.</summary>
    public IReadOnlyList<Variable> Variables { get; }

    /// <summary>The layout at a point.</summary>
    /// <param name="point">One level a variable.</param>
    public Layout At(ReadOnlySpan<double> point)
    {
        var values = new ChoiceValue[point.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = scenario.Choices[i].Levels[(int)point[i]];
        return Layout.Of(values, scenario.Systems.Choices);
    }

    private Variable Variable(VariedChoice varied)
    {
        var choice = varied.Choice;
        return new Variable
        {
            Name = choice.Key,
            Kind = choice is PartChoice ? VariableKind.Category : VariableKind.Ordered,
            Levels = varied.Levels.Count,
            AwakeWhen = choice.IsAlwaysAwake ? null : point => choice.IsAwake(new PointReader(scenario, point)),
        };
    }

    private readonly struct PointReader(Scenario scenario, IReadOnlyList<double> point) : IChoices
    {
        public ChoiceSet Set => scenario.Systems.Choices;

        public ChoiceValue ValueOf(Choice choice)
        {
            var i = Set.IndexOf(choice);
            return scenario.Choices[i].Levels[(int)point[i]];
        }
    }
}
