using DesignSearch.Climate;

namespace DesignSearch.Layouts;

/// <summary>One winter to be judged on.</summary>
/// <param name="Name">Name for display.</param>
/// <param name="Kind">Typical or hard; a weather file may bring recorded winters instead.</param>
/// <param name="Weight">Share in the weighted means.</param>
/// <param name="ReturnYears">A hard winter: once in how many years its coldest night comes.</param>
public sealed record WinterWish(string Name, WinterKind Kind, double Weight, double ReturnYears);
