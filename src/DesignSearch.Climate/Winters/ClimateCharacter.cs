namespace DesignSearch.Climate.Winters;

/// <summary>How cold and cloud go together from day to day.</summary>
public enum ClimateCharacter
{
    /// <summary>Near the sea or in a valley: clear nights are cold, dull ones mild.</summary>
    MaritimeOrValley,

    /// <summary>Dry inland: cold air masses decide.</summary>
    DryInland,

    /// <summary>Humid with sharp changes, as east of a large land mass.</summary>
    HumidContinental,
}
