using System.Numerics;

namespace DesignSearch.Season.DayStore;

/// <summary>The soil round a buried pipe as one store and one conductance to the layers it lies in, per metre of pipe.</summary>
/// <param name="StoreJPerMK">Store at the pipe's outer face [J/(m·K)].</param>
/// <param name="ToSoilWPerMK">From there to the soil around [W/(m·K)].</param>
public readonly record struct SoilRing(double StoreJPerMK, double ToSoilWPerMK)
{
    /// <summary>Angular frequency of the day [1/s].</summary>
    public const double DayPerS = 2 * Math.PI / 86400;

    private const int Neighbours = 24;

    // A ring is never so thin that a step of some minutes could not follow it.
    private const double LeastStore = 5000;

    /// <summary>
    /// Heat that one of many equal pipes in a row draws from endless soil for each kelvin of a wave at its face, per metre [W/(m·K)]:
    /// 2πλ kr K₁(kr) / (K₀(kr) + 2 Σ K₀(k n s)), k = √(iω/a). Alone it is λ k K₁/K₀ over the face.
    /// </summary>
    /// <param name="conductivity">Conductivity of the soil λ [W/(m·K)], above 0.</param>
    /// <param name="capacity">Its heat capacity [J/(m³K)], above 0.</param>
    /// <param name="radiusM">Outer radius of the pipe r [m], above 0.</param>
    /// <param name="spacingM">From middle to middle s [m], at least 2 r.</param>
    /// <param name="frequency">Angular frequency ω [1/s], above 0.</param>
    public static Complex AdmittanceWPerMK(double conductivity, double capacity, double radiusM, double spacingM,
        double frequency = DayPerS)
    {
        var k = Complex.Sqrt(new Complex(0, frequency * capacity / conductivity));
        var face = BesselK(0, k * radiusM);
        for (var n = 1; n <= Neighbours; n++)
            face += 2 * BesselK(0, k * (n * spacingM));
        return 2 * Math.PI * conductivity * k * radiusM * BesselK(1, k * radiusM) / face;
    }

    /// <summary>
    /// The ring that answers the day's wave as strongly as the soil does, with the layers behind it answering too: its conductance is the
    /// part in step
    /// with the wave, its store makes up the rest of the amount. The phase is off by some degrees, for a layer is one lump.
    /// </summary>
    /// <param name="admittance">Of the soil, per metre [W/(m·K)].</param>
    /// <param name="layersMKPerJ">How much the soil it lies in warms by one joule per metre, Σ share²/store [m·K/J].</param>
    public static SoilRing Of(Complex admittance, double layersMKPerJ)
    {
        var conductance = admittance.Real;
        var behind = Behind(conductance, layersMKPerJ, DayPerS);
        var amount = admittance.Magnitude;
        var rest = Math.Sqrt(Math.Max(0, amount * amount - behind.Real * behind.Real)) - behind.Imaginary;
        return new(Math.Max(LeastStore, rest / DayPerS), conductance);
    }

    private static Complex Behind(double conductance, double layersMKPerJ, double frequency) =>
        1 / (1 / conductance + layersMKPerJ / new Complex(0, frequency));

    // Modified Bessel function of the second kind: the integral of exp(-z cosh t) cosh(n t) from 0 on; the trapezoid rule converges at
    // once. Re z > 0.
    private static Complex BesselK(int order, Complex z)
    {
        const double step = 0.05;
        var sum = 0.5 * Complex.Exp(-z);
        for (var i = 1; i < 400; i++)
        {
            var t = step * i;
            var part = Complex.Exp(-z * Math.Cosh(t)) * Math.Cosh(order * t);
            sum += part;
            if (part.Magnitude <= 1e-17 * sum.Magnitude)
                break;
        }

        return step * sum;
    }
}
