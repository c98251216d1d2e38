using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Rows D1 of the check values beyond the plain loss per metre.</summary>
public sealed class PipeRunTests
{
    private const string Linear = "linear resistances of ISO 12241, recomputed";

    [Theory]
    [InlineData("22 mm, 20 mm foam", 0.038, 0.022, 0.062, 10, 4.8529)]
    [InlineData("25 mm, 25 mm foam", 0.040, 0.025, 0.075, 10, 4.7957)]
    public void Resistance(string pipe, double conductivity, double inner, double outer, double film, double resistance) => Validation.Equal(
        $"pipe D1 {pipe} resistance", "m·K/W", resistance, 1 / PipeLoss.PerMetreK(conductivity, inner, outer, film), resistance / 1000, Linear, "PipeLoss.PerMetreK");

    [Theory]
    [InlineData(0.19949, 30, 0.05, 4180, 50, 0, 48.5886, 294.99)]
    [InlineData(0.22, 60, 0.1, 4190, 45, -5, 43.4494, 649.71)]
    public void Water_cools_along_a_pipe(double lossPerMetre, double length, double flow, double heat, double water, double ambient, double end, double lost)
    {
        var ours = PipeLoss.EndC(water, ambient, lossPerMetre * length, flow * heat);
        Validation.Equal(FormattableString.Invariant($"pipe D1 end of {length} m"), "°C", end, ours, end / 1000, "exponential fall along a pipe, recomputed", "PipeLoss.EndC");
        Validation.Equal(FormattableString.Invariant($"pipe D1 heat lost over {length} m"), "W", lost, flow * heat * (water - ours), lost / 1000, "exponential fall along a pipe, recomputed", "PipeLoss.EndC");
    }

    [Fact]
    public void A_thin_sleeve_on_a_thin_pipe_loses_most_at_the_critical_radius()
    {
        // λ/h = 0.040/10 = 4 mm: a sleeve on a pipe of 2 mm radius loses most there, less to either side.
        double At(double radius) => PipeLoss.PerMetreK(0.040, 0.004, 2 * radius, 10);
        var worst = Enumerable.Range(21, 100).Select(i => i / 10_000.0).MaxBy(At);
        Validation.Equal("pipe D1 critical radius", "mm", 4, worst * 1000, 0.11, "λ/h, analytic", "PipeLoss.PerMetreK");
    }
}
