using DesignSearch.Season.Flows;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Logged;

/// <summary>What a log in the place of a heater adds to the books.</summary>
internal static class LoggedFlows
{
    public static SourceKind Kind { get; } = new("logged", 80)
    {
        Flows =
        [
            new("logged-heat", Accounts.Mains, Accounts.House, "heat that was logged"),
            new("logged-hold", "log", Accounts.House, "heat that holds the air as logged", "heat taken to hold the air as logged"),
        ],
    };
}
