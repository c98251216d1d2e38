namespace DesignSearch.Layouts.Design;

/// <summary>Where the plants that are held stand, where that is not the whole house.</summary>
/// <param name="Brief">In a word, for a chart.</param>
/// <param name="Where">For instance "under the fleece".</param>
/// <param name="Also">What another system may hold in its place, said of the house.</param>
/// <param name="Held">What is held and what is not, the beginning of a sentence, without the house's temperature.</param>
public sealed record PlantPlace(string Brief, string Where, string Also, string Held);
