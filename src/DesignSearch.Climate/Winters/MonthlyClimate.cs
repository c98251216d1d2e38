namespace DesignSearch.Climate.Winters;

/// <summary>A place with twelve monthly means: enough to make winters from when there is no weather file.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="Months">Twelve, January first.</param>
public sealed record MonthlyClimate(Place Place, IReadOnlyList<MonthMeans> Months)
{
    /// <summary>How cold and cloud go together; none: judged from the means.</summary>
    public ClimateCharacter? Character { get; init; }

    /// <summary>The character that is used: the given one, else dry inland under 65 % humidity in the coldest month, humid continental
    /// when the yearly swing of the means is over 20 K, else maritime or valley (rule of thumb of our own, from memory).</summary>
    public ClimateCharacter UsedCharacter
    {
        get
        {
            var coldest = Months.MinBy(m => m.MeanC)!;
            return Character ?? (coldest.HumidityPercent < 65 ? ClimateCharacter.DryInland
                : Months.Max(m => m.MeanC) - coldest.MeanC > 20 ? ClimateCharacter.HumidContinental
                : ClimateCharacter.MaritimeOrValley);
        }
    }
}
