namespace DesignSearch.Season;

/// <summary>How much light sheets let through by angle: Snell and Fresnel for equal sheets, scaled to what was measured straight through.</summary>
/// <remarks>Equation: r⊥ = sin²(t₂−t₁)/sin²(t₂+t₁), r∥ = tan²(t₂−t₁)/tan²(t₂+t₁); N sheets pass (1−r)/(1+(2N−1)r), the mean of both polarisations. Source: Duffie and Beckman, chapter 5.</remarks>
/// <param name="Layers">Sheets, 1 or more.</param>
/// <param name="NormalTransmittance">Measured straight through, dirt and bars allowed for [0…1].</param>
/// <param name="RefractiveIndex">Refractive index: glass 1.526, polycarbonate 1.586, polyethylene 1.51.</param>
public sealed record Glazing(int Layers, double NormalTransmittance, double RefractiveIndex = 1.526)
{
    /// <summary>Share of light that passes.</summary>
    /// <param name="cosIncidence">Cosine of the angle of incidence; 0 or below passes nothing.</param>
    public double Transmittance(double cosIncidence) => cosIncidence <= 0 ? 0 : NormalTransmittance * Reflecting(Layers, RefractiveIndex, cosIncidence) / Reflecting(Layers, RefractiveIndex, 1);

    /// <summary>Share that non-absorbing sheets let through.</summary>
    /// <param name="layers">Sheets.</param>
    /// <param name="index">Refractive index.</param>
    /// <param name="cosIncidence">Cosine of the angle of incidence, above 0.</param>
    public static double Reflecting(int layers, double index, double cosIncidence)
    {
        var (across, along) = FaceReflectance(index, cosIncidence);
        double Pass(double r) => (1 - r) / (1 + (2 * layers - 1) * r);
        return (Pass(across) + Pass(along)) / 2;
    }

    /// <summary>Reflectance of one face for both polarisations.</summary>
    /// <inheritdoc cref="Reflecting"/>
    public static (double Across, double Along) FaceReflectance(double index, double cosIncidence)
    {
        var cos1 = Math.Min(1, cosIncidence);
        var sin2 = Math.Sqrt(Math.Max(0, 1 - cos1 * cos1)) / index;
        var cos2 = Math.Sqrt(1 - sin2 * sin2);
        var across = (cos1 - index * cos2) / (cos1 + index * cos2);
        var along = (index * cos1 - cos2) / (index * cos1 + cos2);
        return (across * across, along * along);
    }
}
