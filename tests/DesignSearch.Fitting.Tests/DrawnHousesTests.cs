using DesignSearch.Fitting.Estimate;
using DesignSearch.Fitting.Tests.Truth;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Fitting.Tests;

/// <summary>
/// Houses whose cover, leaks, edge, films, soil, stores, wind, sky and sun are drawn away from the model's usual figures, logged in a winter that the fit does not
/// know: their loss must be found, and what is stated of its error must hold.
/// </summary>
public sealed class DrawnHousesTests
{
    private const double NinetyOfHundred = 1.645 / 1.96;
    private const string Source = "synthetic truth: drawn houses, figures away from the usual, sky and wind unknown to the fit";

    private static readonly int Many = Longer.Many("DESIGNSEARCH_HOUSES", 6, 10);

    // From so many on a root mean square means something; by hand.
    private const int Enough = 40;

    [Fact]
    public void Three_cold_nights_at_8_C_and_fourteen_at_2_C_tell_the_loss_and_how_sure_it_is()
    {
        var three = Run(3, 8, h => -1);
        var fourteen = Run(14, 2.5, h => 30 + (h * 7 % 70));
        var both = three.Concat(fourteen).ToList();
        var right = both.Count(b => Math.Abs(b.Miss) < b.Half * NinetyOfHundred) / (double)both.Count;
        var told = $"three: {Rms(three):0.000} of {three.Count}, fourteen: {Rms(fourteen):0.000} of {fourteen.Count}, right {right:0.00}";
        Assert.True(three.Count >= 0.9 * Many && fourteen.Count >= 0.8 * Many, told);
        if (Many < Enough)
        {
            // Few houses leave much to chance: what is stated of the error must hold; how large it is, 0.06 wanted and held, 0.09 wanted and missed, is told by many.
            Assert.True(Rms(three) < 0.09 && Rms(fourteen) < 0.2 && right >= 0.8, told);
            return;
        }

        Validation.Within("fit loss three nights", "root mean square of the error, share", 0, 0.06, Rms(three), Source, "HouseFitting.Run");
        Validation.Missed("fit loss fourteen nights", "root mean square of the error, share", 0, 0.09, Rms(fourteen), Source, "HouseFitting.Run");
        Validation.Within("fit stated band", "share of the 90 % bands that hold the truth", 0.80, 0.97, right, Source, "HouseFitting.Run");
    }

    [Fact]
    public void Unheated_nights_are_never_said_to_tell_the_loss()
    {
        for (var h = 0; h < Longer.Many("DESIGNSEARCH_HOUSES", 3, 6); h++)
        {
            var truth = new TrueHouse(Houses.All[h % Houses.All.Count], 300 + h);
            var log = truth.Log(14, _ => double.NaN, 20 + 5 * h);
            foreach (var heater in new[] { "heater_kwh", "" })
            {
                var fit = Houses.Fit(truth.Scenario, ("log.csv", log.Csv(10, heater)));
                Assert.False(fit.IsLearnt);
                Assert.Null(fit.Fit);
                Assert.True(Houses.Half(fit) > 0.15);
            }
        }
    }

    [Fact]
    public void Thirty_days_are_fitted_within_ten_seconds()
    {
        var truth = new TrueHouse(Houses.All[0], 77);
        var text = truth.Log(30, _ => 8, 40).Csv();
        Houses.Fit(truth.Scenario, ("warm.csv", truth.Log(3, _ => 8).Csv()));
        var seconds = System.Diagnostics.Process.GetCurrentProcess().TotalProcessorTime;
        var fit = Houses.Fit(truth.Scenario, ("log.csv", text));
        Assert.True(fit.IsLearnt);
        // By the processor's time, for the machine may have other work: ten seconds of two cores.
        Assert.InRange((System.Diagnostics.Process.GetCurrentProcess().TotalProcessorTime - seconds).TotalSeconds, 0, 20);
    }

    private static List<(double Miss, double Half)> Run(int nights, double setC, Func<int, int> firstDay)
    {
        var found = new List<(double, double)>();
        for (var h = 0; h < Many; h++)
        {
            var truth = new TrueHouse(Houses.All[h % Houses.All.Count], 1000 + h);
            var log = truth.Log(nights, _ => setC, firstDay(h));
            FitResult fit = Houses.Fit(truth.Scenario, ("log.csv", log.Csv()));
            if (fit.IsLearnt)
                found.Add((Houses.Miss(truth, fit), Houses.Half(fit)));
        }

        return found;
    }

    private static double Rms(List<(double Miss, double Half)> found) => Math.Sqrt(found.Average(f => f.Miss * f.Miss));
}
