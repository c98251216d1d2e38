namespace DesignSearch.Season.Flows;

/// <summary>Something of the plant that keeps heat from hour to hour, and has an account of its own in the books.</summary>
/// <param name="Id">Small letters and hyphens; flows name it as the account they leave or enter.</param>
/// <param name="Words">What a person calls it, to stand behind "left in" and "out of".</param>
public sealed record Store(string Id, string Words);
