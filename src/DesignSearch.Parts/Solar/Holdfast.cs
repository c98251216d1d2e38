using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Solar;

/// <summary>What holds a stand to the ground or a wall, or a turning frame where it stands.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Holdfast(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("holdfast", "holdfasts.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(IsOfFrame == (ArmM > 0), "arm_m", "more than 0 for what holds a frame, 0 for what holds a stand"),
        new(Form == HoldfastForm.GroundScrew == (LengthM > 0), "length_m", "more than 0 for a ground screw, else 0"),
        new(Form == HoldfastForm.SpringBolt == (Volts > 0 && Watts > 0), "volts", "voltage and power for a spring bolt, else 0"),
    ];

    /// <summary>What it is.</summary>
    public required HoldfastForm Form { get; init; }

    /// <summary>Pull, or push across it, that it stands [N], from 50 to 200000.</summary>
    public required double HoldsN { get; init; }

    /// <summary>Distance from the frame's axis at which it holds [m], 0 for what holds a stand, from 0 to 5.</summary>
    public required double ArmM { get; init; }

    /// <summary>How deep a ground screw goes [m], 0 for anything else, from 0 to 5.</summary>
    public required double LengthM { get; init; }

    /// <summary>Supply of what draws a spring bolt back [V], 0 for anything else, from 0 to 60.</summary>
    public required double Volts { get; init; }

    /// <summary>Power that it takes meanwhile [W], 0 for anything else, from 0 to 100.</summary>
    public required double Watts { get; init; }

    /// <summary>Moment about the axis that it holds [N·m]; 0 for what holds a stand.</summary>
    public double HoldsNm => HoldsN * ArmM;

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TorqueNm && IsOfFrame ? HoldsNm : base.Bears(rating);

    private bool IsOfFrame => Form is HoldfastForm.Stops or HoldfastForm.HandBolt or HoldfastForm.SpringBolt;

    internal static Holdfast Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece, PartUnit.Set]))
    {
        Form = cells.Word("form", Words.Of<HoldfastForm>(), "What it is"),
        HoldsN = cells.Number("holds_n", 50, 200000, "Pull, or push across it, that it stands [N]"),
        ArmM = cells.Number("arm_m", 0, 5, "Distance from the frame's axis at which it holds [m], 0 for what holds a stand"),
        LengthM = cells.Number("length_m", 0, 5, "How deep a ground screw goes [m], 0 for anything else"),
        Volts = cells.Number("volts", 0, 60, "Supply of what draws a spring bolt back [V], 0 for anything else"),
        Watts = cells.Number("watts", 0, 100, "Power that it takes meanwhile [W], 0 for anything else"),
    };
}
