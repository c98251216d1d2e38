using DesignSearch.Layouts.Decide.Weigh;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>In how many winters that it was not chosen on a layout held, with all that is in doubt drawn anew in each.</summary>
/// <param name="Held">In how many it had no frost hour.</param>
/// <param name="Of">Of how many.</param>
/// <param name="AtLeast">Lower end of the 95 % interval of the share that would hold among endless ones [0…1].</param>
/// <param name="AtMost">Upper end of it [0…1].</param>
public sealed record Chance(int Held, int Of, double AtLeast, double AtMost)
{
    /// <summary>A count with its interval (<see cref="WilsonInterval"/>).</summary>
    /// <param name="held">In how many it held.</param>
    /// <param name="of">Of how many, 1 or more.</param>
    public static Chance Counted(int held, int of)
    {
        var (low, high) = WilsonInterval.Of(held, of);
        return new(held, of, low, high);
    }
}
