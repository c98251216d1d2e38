namespace DesignSearch.Layouts.Design.Schemes;

/// <summary>What joins two components: a pipe, a cable, a duct or one part screwed to the next.</summary>
/// <param name="Medium">What goes through it.</param>
/// <param name="From">Name of the component it comes from, in the direction of flow or of the signal.</param>
/// <param name="FromTerminal">Its terminal.</param>
/// <param name="To">Name of the component it goes to.</param>
/// <param name="ToTerminal">Its terminal.</param>
/// <param name="PartIds">Bought parts, along the way; empty where one part sits on the other or brings its own lead.</param>
/// <param name="LengthM">Length one way [m]; 0 where one part sits on the other.</param>
public sealed record Joint(
    Medium Medium,
    string From,
    string FromTerminal,
    string To,
    string ToTerminal,
    IReadOnlyList<string> PartIds,
    double LengthM);
