using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads what the faces of a house are covered with.</summary>
internal static class CoverReading
{
    public const string U = "cover_u_w_per_m2k";
    public const string Light = "cover_light";
    public const string Layers = "cover_layers";
    public const string UUnit = "W/(m²K), as the maker states it";
    public const string LightUnit = "as a share";

    /// <summary>The sheet of some faces; null where nothing is said of them. What is left out is as with all else.</summary>
    public static CoverSheet? Of(TomlTable table, string face, CoverSheet all)
    {
        var (u, light, layers) = ($"{face}_{U}", $"{face}_{Light}", $"{face}_{Layers}");
        var isSaid = table.Has(u) || table.Has(light) || table.Has(layers);
        var sheet = new CoverSheet(
            table.Number(u, 0.5, 8, UUnit, all.UWPerM2K), table.Number(light, 0.2, 0.95, LightUnit, all.Light), table.Whole(layers, 1, 4, all.Layers));
        return isSaid ? sheet : null;
    }
}
