namespace DesignSearch.Layouts.Design.Checks;

/// <summary>A rule that layouts must meet: what is asked and where it comes from. Each belongs to the system whose parts it asks.</summary>
/// <param name="Id">Short fixed name, for instance "drive-torque".</param>
/// <param name="Title">What is checked, in a few plain words.</param>
/// <param name="Source">Where the rule or the formula comes from.</param>
public sealed record CheckRule(string Id, string Title, string Source)
{
    /// <summary>What came of it.</summary>
    /// <param name="passed">True when it is met.</param>
    /// <param name="margin">Share of the allowance that is left, below 0 where it is missed.</param>
    /// <param name="words">What was found; put into words when it is first read.</param>
    public Check Found(bool passed, double margin, FormattableString words) => Check.Of(Id, Title, passed, margin, words, Source);

    /// <summary>A value against a limit of it.</summary>
    /// <param name="value">The value.</param>
    /// <param name="limit">Its limit.</param>
    /// <param name="unit">Unit of both.</param>
    public Check Limit(double value, double limit, string unit) => Within(value, limit, $"It takes {value:0.#} of {limit:0.#} {unit}.");

    /// <summary>A value against a limit of it, in words of one's own.</summary>
    /// <param name="value">The value.</param>
    /// <param name="limit">Its limit.</param>
    /// <param name="words">What was found.</param>
    public Check Within(double value, double limit, FormattableString words) =>
        Found(value <= limit + 1e-9, limit > 0 ? 1 - (value / limit) : value > 0 ? -1 : 0, words);
}
