using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.Covers;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads what the faces of a house are covered with.</summary>
internal static class CoverReading
{
    public const string U = "cover_u_w_per_m2k";
    public const string Light = "cover_light";
    public const string Layers = "cover_layers";
    public const string UUnit = "W/(m²K), as the maker states it";
    private const string UIs = "cover_u_is";
    private const string LongWave = "cover_long_wave";
    private const double MostU = 9;
    private const double LeastLongWave = 0.05;
    private static readonly string[] UKinds = ["sheet", "house"];
    private static readonly string[] Faces = ["roof", "side", "end"];
    public const string LightUnit = "as a share";

    /// <summary>The sheet of the whole cover, whether its U-value is that of a house, and the share of heat radiation that its films let through.</summary>
    public static (CoverSheet Sheet, bool IsOfHouse, double LongWave) Whole(TomlTable table)
    {
        var (light, layers) = (table.Number(Light, 0.2, 0.95, LightUnit), table.Whole(Layers, 1, 4, 1));
        var longWave = table.Number(LongWave, 0, 0.8, CoverWords.LongWaveUnit, 0);
        if (longWave > LeastLongWave)
        {
            // Such a film has no U-value: what it loses hangs on the sky.
            string[] strange = [U, UIs, .. Faces.Select(f => $"{f}_{U}")];
            foreach (var value in strange.Select(table.Find).OfType<TomlValue>())
                table.Fault(value, CoverWords.FilmHasNoU(LongWave));
            return (new(BareHouse.FilmUWPerM2K(longWave, layers), light, layers), false, longWave);
        }

        var u = table.Number(U, 0.5, MostU, UUnit);
        // Houses under a single sheet were measured to lose far more than its own figure says: without a word it is taken as the house's, which is the safe side.
        var isOfHouse = table.Word(UIs, UKinds, layers == 1 || u > HouseUValue.MostOfSheetWPerM2K ? UKinds[1] : UKinds[0]) == UKinds[1];
        if (!isOfHouse && u > HouseUValue.MostOfSheetWPerM2K && table.Find(U) is { } stated)
            table.Fault(stated, CoverWords.NoSheetLosesMore(UIs, HouseUValue.MostOfSheetWPerM2K));
        return (new(u, light, layers), isOfHouse, 0);
    }

    /// <summary>The sheet of some faces; null where nothing is said of them. What is left out is as with all else.</summary>
    public static CoverSheet? Of(TomlTable table, string face, CoverSheet all)
    {
        var (u, light, layers) = ($"{face}_{U}", $"{face}_{Light}", $"{face}_{Layers}");
        var isSaid = table.Has(u) || table.Has(light) || table.Has(layers);
        var sheet = new CoverSheet(
            table.Number(u, 0.5, MostU, UUnit, all.UWPerM2K), table.Number(light, 0.2, 0.95, LightUnit, all.Light), table.Whole(layers, 1, 4, all.Layers));
        return isSaid ? sheet : null;
    }
}
