namespace DesignSearch.Season.Flows;

/// <summary>A way that heat takes from one account to another. Electricity is not a flow: see <see cref="Use"/>.</summary>
/// <param name="Id">Small letters and hyphens, of no other flow.</param>
/// <param name="From">Account it leaves: the id of a <see cref="Store"/>, or a place outside the plant such as those of <see cref="Accounts"/>.</param>
/// <param name="To">Account it enters, likewise.</param>
/// <param name="Words">What a person calls it while it runs that way.</param>
/// <param name="Back">What a person calls it while it runs the other way; empty where it never does.</param>
public sealed record Flow(string Id, string From, string To, string Words, string Back = "");
