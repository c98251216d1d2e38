using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Solar;

/// <summary>A solar collector, rated in the form of ISO 9806 per gross area.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Collector(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("collector", "collectors.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(Math.Abs((WidthM * HeightM) - AreaM2) <= 0.1 * AreaM2, "area_m2", "width_m times height_m, within a tenth"),
    ];

    /// <summary>Gross area of one collector [m²], from 0.2 to 20.</summary>
    public required double AreaM2 { get; init; }

    /// <summary>Width as it stands [m], from 0.1 to 10.</summary>
    public required double WidthM { get; init; }

    /// <summary>Length up the slope as it stands [m], from 0.1 to 10.</summary>
    public required double HeightM { get; init; }

    /// <summary>Peak efficiency for beam light [0…1], from 0.1 to 0.98.</summary>
    public required double Eta0Beam { get; init; }

    /// <summary>Heat loss term [W/(m²K)], from 0.1 to 30.</summary>
    public required double A1WPerM2K { get; init; }

    /// <summary>Heat loss term, quadratic [W/(m²K²)], from 0 to 0.2.</summary>
    public required double A2WPerM2K2 { get; init; }

    /// <summary>Heat loss added by each metre per second of wind, unglazed collectors [J/(m³K)], from 0 to 10.</summary>
    public required double WindLossJPerM3K { get; init; }

    /// <summary>Incidence modifier for beam: K = 1 − b0 (1/cos θ − 1), from 0 to 0.5.</summary>
    public required double IncidenceB0 { get; init; }

    /// <summary>Incidence modifier for diffuse light, from 0.3 to 1.5.</summary>
    public required double DiffuseModifier { get; init; }

    /// <summary>Heat capacity with its fluid [J/(m²K)], from 500 to 200000.</summary>
    public required double CapacityJPerM2K { get; init; }

    /// <summary>Temperature when it stands dry in full sun, from the certificate [°C], from 30 to 350.</summary>
    public required double StagnationC { get; init; }

    /// <summary>Whether it has a glass or plastic cover.</summary>
    public required bool IsGlazed { get; init; }

    /// <summary>Whether it survives water freezing in it.</summary>
    public required bool IsFreezeSafe { get; init; }

    /// <summary>Fluid in it [L], from 0.1 to 200.</summary>
    public required double WaterL { get; init; }

    /// <summary>Weight when empty [kg], from 0.5 to 300.</summary>
    public required double WeightKg { get; init; }

    /// <summary>Largest flow through one collector [L/min], from 0.1 to 100.</summary>
    public required double MaxFlowLPerMin { get; init; }

    /// <summary>Pressure drop of one collector at its largest flow [kPa], from 0 to 100.</summary>
    public required double DropKPaAtMaxFlow { get; init; }

    /// <summary>Pressure above that of the air that it stands [bar], from 0.1 to 20; null where its row does not say.</summary>
    public double? MaxBar { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.PressureBar ? MaxBar : base.Bears(rating);

    internal static Collector Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        AreaM2 = cells.Number("area_m2", 0.2, 20, "Gross area of one collector [m²]"),
        WidthM = cells.Number("width_m", 0.1, 10, "Width as it stands [m]"),
        HeightM = cells.Number("height_m", 0.1, 10, "Length up the slope as it stands [m]"),
        Eta0Beam = cells.Number("eta0_beam", 0.1, 0.98, "Peak efficiency for beam light [0…1]"),
        A1WPerM2K = cells.Number("a1_w_per_m2k", 0.1, 30, "Heat loss term [W/(m²K)]"),
        A2WPerM2K2 = cells.Number("a2_w_per_m2k2", 0, 0.2, "Heat loss term, quadratic [W/(m²K²)]"),
        WindLossJPerM3K = cells.Number("wind_loss_j_per_m3k", 0, 10, "Heat loss added by each metre per second of wind, unglazed collectors [J/(m³K)]"),
        IncidenceB0 = cells.Number("incidence_b0", 0, 0.5, "Incidence modifier for beam: K = 1 − b0 (1/cos θ − 1)"),
        DiffuseModifier = cells.Number("diffuse_modifier", 0.3, 1.5, "Incidence modifier for diffuse light"),
        CapacityJPerM2K = cells.Number("capacity_j_per_m2k", 500, 200000, "Heat capacity with its fluid [J/(m²K)]"),
        StagnationC = cells.Number("stagnation_c", 30, 350, "Temperature when it stands dry in full sun, from the certificate [°C]"),
        IsGlazed = cells.YesNo("glazed", "Whether it has a glass or plastic cover"),
        IsFreezeSafe = cells.YesNo("freeze_safe", "Whether it survives water freezing in it"),
        WaterL = cells.Number("water_l", 0.1, 200, "Fluid in it [L]"),
        WeightKg = cells.Number("weight_kg", 0.5, 300, "Weight when empty [kg]"),
        MaxFlowLPerMin = cells.Number("max_flow_l_per_min", 0.1, 100, "Largest flow through one collector [L/min]"),
        DropKPaAtMaxFlow = cells.Number("drop_kpa_at_max_flow", 0, 100, "Pressure drop of one collector at its largest flow [kPa]"),
        MaxBar = cells.NumberIfAny("max_bar", 0.1, 20, "Pressure above that of the air that it stands [bar]; empty for open loops only"),
    };
}
