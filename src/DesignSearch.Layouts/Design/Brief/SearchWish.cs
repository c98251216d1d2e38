namespace DesignSearch.Layouts.Design.Brief;

/// <summary>How long to search.</summary>
/// <param name="Seed">Seed of every random number.</param>
/// <param name="Evaluations">Layouts to simulate at most.</param>
/// <param name="Ranked">How many layouts the ranking keeps.</param>
/// <param name="UnseenWinters">Winters it was not chosen on that each pick is judged on afterwards; 0 leaves that out.</param>
/// <param name="Certainty">In what share of such winters the first pick is to hold, with all that is in doubt drawn too [0…0.99]; 0 asks for none.</param>
public sealed record SearchWish(
    ulong Seed, long Evaluations, int Ranked, int UnseenWinters = SearchWish.UsualUnseenWinters, double Certainty = SearchWish.UsualCertainty)
{
    /// <summary>Certainty when the scenario is silent.</summary>
    public const double UsualCertainty = 0.9;

    /// <summary>Unseen winters when the scenario is silent.</summary>
    public const int UsualUnseenWinters = 60;
}
