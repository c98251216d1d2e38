namespace DesignSearch.Season.Glass;

/// <summary>Equal parallel sheets whose transmittance falls with the angle by Snell and Fresnel, scaled to the stated normal value.</summary>
/// <param name="Layers">Number of sheets, 1 or more.</param>
/// <param name="NormalTransmittance">Solar transmittance at normal incidence [0…1].</param>
/// <param name="RefractiveIndex">Refractive index, above 1.</param>
public sealed record Glazing(int Layers, double NormalTransmittance, double RefractiveIndex = 1.526)
{
    /// <summary>Transmittance for light from one direction.</summary>
    /// <param name="cosIncidence">Cosine of the angle of incidence; 0 or less gives 0.</param>
    public double Transmittance(double cosIncidence) =>
        NormalTransmittance * Fresnel(Layers, RefractiveIndex, cosIncidence) / Fresnel(Layers, RefractiveIndex, 1);

    /// <summary>Transmittance of sheets that absorb nothing: mean over both polarisations of (1 − r)/(1 + (2N − 1) r).</summary>
    /// <param name="layers">Number of sheets N.</param>
    /// <param name="refractiveIndex">Refractive index.</param>
    /// <param name="cosIncidence">Cosine of the angle of incidence; 0 or less gives 0.</param>
    public static double Fresnel(int layers, double refractiveIndex, double cosIncidence)
    {
        if (cosIncidence <= 0)
            return 0;
        var cos = Math.Min(cosIncidence, 1);
        var inside = Math.Sqrt(1 - (1 - cos * cos) / (refractiveIndex * refractiveIndex));
        var across = Square((cos - refractiveIndex * inside) / (cos + refractiveIndex * inside));
        var along = Square((inside - refractiveIndex * cos) / (inside + refractiveIndex * cos));
        return (Through(across, layers) + Through(along, layers)) / 2;
    }

    private static double Through(double r, int layers) => (1 - r) / (1 + (2 * layers - 1) * r);

    private static double Square(double x) => x * x;
}
