using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>How current comes to the greenhouse.</summary>
/// <param name="MainsW">Load on mains [W]; 0 without mains devices.</param>
/// <param name="MainsCable">Cable of the mains; null without, or where the greenhouse has mains.</param>
/// <param name="LowVoltageW">Load on extra-low voltage while everything runs [W].</param>
/// <param name="LowVolts">Its voltage [V]; 0 without.</param>
/// <param name="Supplies">Supplies of extra-low voltage.</param>
/// <param name="LowCable">Cable of the extra-low voltage.</param>
/// <param name="LowCableM">Its length one way [m].</param>
/// <param name="DropV">Voltage lost in it at full load [V].</param>
public sealed record SupplyPlan(double MainsW, Cable? MainsCable, double LowVoltageW, double LowVolts, IReadOnlyList<PowerSupply> Supplies, Cable? LowCable, double LowCableM, double DropV);
