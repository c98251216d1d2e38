using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Skin;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>What can be added to the skin of the house.</summary>
public static class SkinChoices
{
    /// <summary>Cover drawn at night.</summary>
    public static PartChoice<NightCover> NightCover { get; } =
        new("night_cover", "cover drawn at night", Parts.Skin.NightCover.Definition) { NamesTheLayout = true };

    /// <summary>Lining under the cover.</summary>
    public static PartChoice<Lining> Lining { get; } = new("lining", "lining under the cover", Parts.Skin.Lining.Definition) { NamesTheLayout = true };

    /// <summary>Sealing of gaps.</summary>
    public static PartChoice<Sealing> Sealing { get; } = new("sealing", "sealing of gaps", Parts.Skin.Sealing.Definition);

    /// <summary>Insulation board at the floor's edge.</summary>
    public static PartChoice<PerimeterBoard> PerimeterBoard { get; } =
        new("perimeter_board", "insulation board at the floor's edge", Parts.Skin.PerimeterBoard.Definition);

    /// <summary>Net or hedge against the wind.</summary>
    public static PartChoice<WindBreak> WindBreak { get; } = new("wind_break", "net or hedge against the wind", Parts.Skin.WindBreak.Definition);

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Choice> All { get; } = [NightCover, Lining, Sealing, PerimeterBoard, WindBreak];

    /// <summary>Those that are a line of the bill by themselves, whatever else is chosen; a drawn cover may want motors and current.</summary>
    public static IReadOnlyList<PartChoice> Plain { get; } = [Lining, Sealing, PerimeterBoard, WindBreak];
}
