using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.DayStore;

/// <summary>Pipe for the air of a day-heat store, laid in the ground under the floor, by the metre; its labour holds the trench.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record EarthPipe(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("earth-pipe", "earth-pipes.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Bore [mm], from 40 to 600.</summary>
    public required double BoreMm { get; init; }

    /// <summary>Outer diameter [mm], from 42 to 650.</summary>
    public required double OuterMm { get; init; }

    /// <summary>Conductivity of the wall [W/(m·K)], from 0.05 to 60.</summary>
    public required double WallWPerMK { get; init; }

    /// <summary>Friction as a factor on that of a smooth pipe, from 1 to 5.</summary>
    public required double FrictionFactor { get; init; }

    /// <summary>Heat from air to wall as a factor on that of a smooth pipe, from 1 to 1.6.</summary>
    public required double FilmFactor { get; init; }

    internal static EarthPipe Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        BoreMm = cells.Number("bore_mm", 40, 600, "Bore [mm]"),
        OuterMm = cells.Number("outer_mm", 42, 650, "Outer diameter [mm]"),
        WallWPerMK = cells.Number("wall_w_per_mk", 0.05, 60, "Conductivity of the wall [W/(m·K)]"),
        FrictionFactor = cells.Number("friction_factor", 1, 5, "Friction as a factor on that of a smooth pipe; 2 to 4 for a corrugated "
            + "bore"),
        FilmFactor = cells.Number("film_factor", 1,
            1.6, "Heat from air to wall as a factor on that of a smooth pipe; 1.2 to 1.5 for a corrugated bore"),
    };

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules
    {
        get
        {
            yield return new(BoreMm < OuterMm, "bore_mm", "less than outer_mm");
            yield return new(FilmFactor <= FrictionFactor, "film_factor", "at most friction_factor: what helps the heat costs the fan "
                + "more");
        }
    }
}
