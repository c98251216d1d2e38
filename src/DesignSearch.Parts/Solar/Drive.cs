using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Mechanics;

namespace DesignSearch.Parts.Solar;

/// <summary>A motor with gear that turns a mount.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Drive(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("drive", "drives.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Rated torque at the output shaft, in the unit of the next column, from 0.01 to 100000.</summary>
    public required double Torque { get; init; }

    /// <summary>Unit of the torque; the trade writes kg-cm for the weight of a kilogram on one centimetre.</summary>
    public required TorqueUnit TorqueUnit { get; init; }

    /// <summary>Torque that it holds against while it rests [N·m], from 0 to 100000.</summary>
    public required double HoldsNm { get; init; }

    /// <summary>Efficiency of the gear [0…1]; the rated torque stands behind it already, from 0.05 to 0.98.</summary>
    public required double GearEfficiency { get; init; }

    /// <summary>Whether it holds its place without current; vibration can defeat it.</summary>
    public required bool IsSelfLocking { get; init; }

    /// <summary>Speed of the output shaft [°/s], from 0.01 to 60.</summary>
    public required double SpeedDegPerS { get; init; }

    /// <summary>Supply [V], from 5 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Power at rated torque [W], from 1 to 1000.</summary>
    public required double Watts { get; init; }

    /// <summary>Current while it starts [A], from 0.05 to 200.</summary>
    public required double StartCurrentA { get; init; }

    /// <summary>Rated torque at the output shaft [N·m].</summary>
    public double TorqueNm => TorqueUnits.ToNm(Torque, TorqueUnit);

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static Drive Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Torque = cells.Number("torque", 0.01, 100000, "Rated torque at the output shaft, in the unit of the next column"),
        TorqueUnit = cells.Word("torque_unit", Words.Of<TorqueUnit>(), "Unit of the torque; the trade writes kg-cm for the weight of a kilogram on one centimetre"),
        HoldsNm = cells.Number("holds_nm", 0, 100000, "Torque that it holds against while it rests [N·m]"),
        GearEfficiency = cells.Number("gear_efficiency", 0.05, 0.98, "Efficiency of the gear [0…1]; the rated torque stands behind it already"),
        IsSelfLocking = cells.YesNo("self_locking", "Whether it holds its place without current; vibration can defeat it"),
        SpeedDegPerS = cells.Number("speed_deg_per_s", 0.01, 60, "Speed of the output shaft [°/s]"),
        Volts = cells.Number("volts", 5, 400, "Supply [V]"),
        Watts = cells.Number("watts", 1, 1000, "Power at rated torque [W]"),
        StartCurrentA = cells.Number("start_current_a", 0.05, 200, "Current while it starts [A]"),
    };
}
