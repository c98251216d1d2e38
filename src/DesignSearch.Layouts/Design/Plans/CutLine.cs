namespace DesignSearch.Layouts.Design.Plans;

/// <summary>Pieces of one name and one length, to the centimetre.</summary>
/// <param name="Name">What they are.</param>
/// <param name="Count">How many, for all frames.</param>
/// <param name="LengthM">Length of each, from joint to joint [m].</param>
public sealed record CutLine(string Name, int Count, double LengthM);
