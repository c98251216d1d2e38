using DesignSearch.Parts.Solar;

namespace DesignSearch.Parts.Mechanics;

/// <summary>Torque in other units than newton metres.</summary>
public static class TorqueUnits
{
    /// <summary>One kilogram-force centimetre [N·m], exactly, from the standard gravity 9.80665 m/s² (NIST SP 811, appendix B.8).</summary>
    public const double NmPerKgfCm = 0.0980665;

    /// <summary>Torque in newton metres.</summary>
    /// <param name="torque">The number on the label.</param>
    /// <param name="unit">Its unit; kg·cm is taken as kgf·cm (common practice, no source).</param>
    public static double ToNm(double torque, TorqueUnit unit) => unit == TorqueUnit.Nm ? torque : torque * NmPerKgfCm;
}
