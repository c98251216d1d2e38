using DesignSearch.Physics;

namespace DesignSearch.Parts.Mechanics;

/// <summary>Moments at the shaft of a mount besides the wind.</summary>
public static class ShaftMoments
{
    /// <summary>Moment of a weight that hangs off the axis: m g e cos α [N·m].</summary>
    /// <param name="massKg">Mass that turns [kg].</param>
    /// <param name="offsetM">Distance from the axis to its centre of gravity [m].</param>
    /// <param name="angleDeg">Angle of that distance above the horizontal [°].</param>
    public static double ImbalanceNm(double massKg, double offsetM, double angleDeg = 0) =>
        massKg * Gravity.StandardMPerS2 * offsetM * Math.Cos(angleDeg * Math.PI / 180);

    /// <summary>Friction of a bearing: µ P d / 2 [N·m]; starting friction may be twice as much (bearing makers' tables).</summary>
    /// <param name="coefficient">Friction coefficient µ: about 0.0013 for a thrust ball bearing, 0.01 to 0.2 for a plain one.</param>
    /// <param name="loadN">Load P on the bearing [N].</param>
    /// <param name="diameterM">Mean diameter d on which it rubs or rolls [m].</param>
    public static double BearingFrictionNm(double coefficient, double loadN, double diameterM) => coefficient * loadN * diameterM / 2;
}
