namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>One picked layout weighed.</summary>
/// <param name="Rank">Its rank.</param>
/// <param name="Unseen">How it stood winters that it was not chosen on; null without such winters.</param>
/// <param name="Swaps">One choice changed for its neighbour, the one that matters most first.</param>
/// <param name="Doubts">The biggest doubts, one at a time.</param>
/// <param name="Week">The week that tries it hardest, hour by hour.</param>
/// <param name="WhatIfs">The coldest design winter as it is, then colder, then without current.</param>
public sealed record PickWeighing(
    int Rank, UnseenWinters? Unseen, IReadOnlyList<Swap> Swaps, IReadOnlyList<Doubt> Doubts, Week Week, IReadOnlyList<WhatIf> WhatIfs);
