namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>The nearest miss where nothing holds.</summary>
/// <param name="Rank">Rank of the layout.</param>
/// <param name="Winter">Its worst winter.</param>
/// <param name="FrostHours">Hours short in it.</param>
/// <param name="ShortK">Kelvin short in the coldest hour.</param>
/// <param name="Hour">Start of the coldest hour, local standard time; the year is nominal.</param>
/// <param name="Balance">Heat of that hour, what comes in above zero [W].</param>
/// <param name="Sentences">The same, the part that would help most and the budget at which something holds, in plain sentences.</param>
public sealed record Miss(int Rank, string Winter, int FrostHours, double ShortK, DateTime Hour, IReadOnlyList<HourFlow> Balance, IReadOnlyList<string> Sentences);
