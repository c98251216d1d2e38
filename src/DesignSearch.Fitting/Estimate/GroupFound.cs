using DesignSearch.Fitting.Model;
using MathNet.Numerics.LinearAlgebra;

namespace DesignSearch.Fitting.Estimate;

/// <summary>What least squares found in some nights, or days.</summary>
/// <param name="Point">The figures.</param>
/// <param name="Logs">Their logarithms against the usual ones, the chief figure first.</param>
/// <param name="Covariance">Of those logarithms, every night one reading.</param>
/// <param name="NightMeansK">Measured less predicted, mean of each night [K].</param>
/// <param name="SensitivityK">By how much a night's air falls for each e-fold of the chief figure [K].</param>
/// <param name="Own">Logarithm of the chief figure that each night by itself has against the common one.</param>
internal sealed record GroupFound(
    FitPoint Point, double[] Logs, Matrix<double> Covariance, double[] NightMeansK, double[] SensitivityK, double[] Own)
{
    /// <summary>Standard error of the chief figure's logarithm.</summary>
    public double Error => Math.Sqrt(Covariance[0, 0]);
}
