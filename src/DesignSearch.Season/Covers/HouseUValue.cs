using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;

namespace DesignSearch.Season.Covers;

/// <summary>
/// A U-value of greenhouse practice is that of a house, not of a sheet: cold sky, wind, bars and leaking joints are in it, over the area of the cover. What the layers do not
/// explain of it is taken as more exchange at the cover.
/// </summary>
public static class HouseUValue
{
    /// <summary>Largest that a sheet can have under the films of EN 673 [W/(m²K)]; what is stated above it is a house's.</summary>
    public const double MostOfSheetWPerM2K = 1 / (1 / SheetResistance.OutsideFilmWPerM2K + 1 / SheetResistance.InsideFilmWPerM2K);

    // Beyond these a stated value is no longer met.
    private const double Least = 0.25, Most = 8;
    private const int Halvings = 40;

    /// <summary>The house whose cover and leaking air lose as much as stated, in <see cref="HeldNight.OfPractice"/>.</summary>
    /// <param name="bare">The house with the resistance of its layers, nothing added.</param>
    /// <param name="uWPerM2K">What is stated [W/(m²K) of cover].</param>
    public static HouseNumbers Met(HouseNumbers bare, double uWPerM2K)
    {
        ArgumentNullException.ThrowIfNull(bare);
        var night = HeldNight.OfPractice;
        var wanted = uWPerM2K * bare.CoverAreaM2 * (night.InsideC - night.OutsideC);
        var (low, high) = (Least, Most);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = Math.Sqrt(low * high);
            if (HeldHouse.LossW(Installation.Of(bare with { CoverExchange = middle }), night, SeasonAssumptions.Default) < wanted)
                low = middle;
            else
                high = middle;
        }

        return bare with { CoverExchange = Math.Sqrt(low * high) };
    }
}
