namespace DesignSearch.Layouts.Design.Papers;

/// <summary>Whose licensed work is asked for.</summary>
public enum Trade
{
    /// <summary>Mains.</summary>
    Electrician,

    /// <summary>What is closed and under pressure, and refrigerant.</summary>
    Plumber,
}
