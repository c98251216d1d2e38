using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>Reads choices by their types. (An indexer cannot be generic, so that these are methods.)</summary>
public static class ChoicesExtensions
{
    /// <summary>The part chosen; null for none, and for the cheapest that serves.</summary>
    public static T? Get<T>(this IChoices choices, PartChoice<T> choice)
        where T : class, IPart
    {
        ArgumentNullException.ThrowIfNull(choices);
        return choices.ValueOf(choice).Part as T;
    }

    /// <summary>The number chosen; 0 where the choice sleeps.</summary>
    public static double Get(this IChoices choices, NumberChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return choices.ValueOf(choice).Number;
    }

    /// <summary>Whether a part is chosen, be it only "the cheapest".</summary>
    public static bool Has(this IChoices choices, PartChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return !choices.ValueOf(choice).IsNone;
    }
}
