using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Weather;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What is made where a file has the air alone, or the air and how much of the sky was covered; and when the sun's own column is believed.</summary>
public sealed class MissingFieldsTests
{
    private const int Days = 40;

    // The file begins at five in the morning.
    private const int Midnight = 5;
    private static readonly Place Here = new("Somewhere", 45, 7.5, 100, 1);
    private static readonly DateTime Start = new(2021, 2, 1, Midnight, 0, 0);
    private static readonly double[] Air = [.. Enumerable.Range(0, (24 * Days) - Midnight).Select(h => 3 - (4 * Math.Cos((h + Midnight) * Math.PI / 12)) + (h / 24))];

    [Fact]
    public void Without_wind_a_light_breeze_blows_throughout()
    {
        var (missing, repairs) = Of(null);
        Assert.All(missing.Wind(), w => Assert.Equal(2, w));
        Assert.Equal(Air.Length, missing.Wind().Length);
        Assert.Equal("The file has no wind: 2 m/s was taken throughout.", repairs[0]);
    }

    [Fact]
    public void Without_humidity_the_dew_point_is_the_lowest_of_the_day_from_midnight_to_midnight()
    {
        var (missing, repairs) = Of(null);
        var dew = missing.DewPoint();
        // The first day's hours before the file begins are not known: its first one stands for them.
        Assert.Equal(Math.Min(Air[0], Air[..(24 - Midnight)].Min()), dew[3], 1e-12);
        var day = Air[(48 - Midnight)..(72 - Midnight)];
        Assert.All(dew[(48 - Midnight)..(72 - Midnight)], d => Assert.Equal(day.Min(), d, 1e-12));
        Assert.Single(repairs);
    }

    // Kasten and Czeplak 1980: 910 sin - 30 under a clear sky, a quarter of it under a covered one.
    [Fact]
    public void Under_a_known_sky_the_light_is_that_of_its_cover_hour_by_hour()
    {
        var cover = Enumerable.Range(0, Air.Length).Select(h => h % 3 == 0 ? 1.0 : 0).ToArray();
        var (missing, repairs) = Of(cover);
        var global = missing.Global();
        var days = new SyntheticDays(Here, Start.AddHours(-Midnight), Days);
        Assert.StartsWith("The file has no sun (an agency): it was made from the cover of the sky (Kasten and Czeplak 1980).", repairs[0], StringComparison.Ordinal);
        for (var h = 0; h < global.Length; h++)
        {
            var sine = days.SinAltitude[h + Midnight];
            Assert.Equal(sine <= 0 ? 0 : Math.Max(0, (910 * sine) - 30) * (h % 3 == 0 ? 0.25 : 1), global[h], 1e-9);
        }

        // Under a whole cover all light is diffuse.
        var diffuse = missing.Diffuse(global);
        Assert.All(Enumerable.Range(0, global.Length).Where(h => h % 3 == 0), h => Assert.Equal(global[h], diffuse[h], 1e-9));
        Assert.Contains(Enumerable.Range(0, global.Length), h => diffuse[h] < 0.5 * global[h]);
    }

    [Theory]
    [InlineData(20, true)]
    [InlineData(19, false)]
    [InlineData(40, true)]
    public void The_cover_is_used_where_it_is_known_on_half_the_days(int known, bool used)
    {
        // Nights need not be known.
        var days = new SyntheticDays(Here, Start.AddHours(-Midnight), Days);
        var cover = Enumerable.Range(Midnight, Air.Length).Select(h => h / 24 < known && days.SinAltitude[h] > 0 ? 0.5 : double.NaN).ToArray();
        var (missing, repairs) = Of(cover);
        var global = missing.Global();
        Assert.Equal(used ? 0 : 1, repairs.Count(r => r == FormattableString.Invariant($"The cover of the sky is known on {100.0 * known / Days:0} % of the days only; it was not used.")));
        Assert.Equal(used && known < Days ? 1 : 0, repairs.Count(r => r == $"On {Days - known} of {Days} days the cover is not known: there the sun comes from the daily range of the temperature."));
        Assert.Equal(used ? 0 : 1, repairs.Count(r => r.StartsWith("The file has no sun (an agency): it was made up from the daily range of the temperature", StringComparison.Ordinal)));
        var noon = (24 * 10) + 12 - Midnight;
        Assert.Equal(used, Math.Abs(global[noon] - CloudSky.GlobalWPerM2(days.SinAltitude[noon + Midnight], 0.5)) < 1e-9);
        Assert.True(global[(24 * 35) + 12 - Midnight] > 0);
    }

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.49, false)]
    public void The_sky_is_made_of_its_cover_where_half_of_the_hours_are_known(double share, bool made)
    {
        var cover = Enumerable.Range(0, Air.Length).Select(h => h < Math.Ceiling(share * Air.Length) ? 1.0 : double.NaN).ToArray();
        var (missing, repairs) = Of(cover);
        var sky = missing.SkyLongWave([.. Air.Select(a => a - 2)], new double[Air.Length]);
        Assert.Equal(made, sky is not null);
        Assert.Equal(made ? ["The sky's long-wave light was made from its cover by cloud."] : [], repairs);
        if (!made)
            return;
        // Under a whole cover the sky is warmer than under none.
        var clear = Of([.. cover.Select(c => double.IsNaN(c) ? c : 0)]).Missing.SkyLongWave([.. Air.Select(a => a - 2)], new double[Air.Length])!;
        Assert.All(Enumerable.Range(0, Air.Length / 2), h => Assert.True(sky![h] > clear[h] + 20));
        Assert.Equal(clear[^1], sky![^1], 1e-9);
    }

    // 800 W/m² normal to a sun at 60° are 400 on the level. A tenth of the global light may be missing, 20 W/m² at the least; none may be too much.
    [Theory]
    [InlineData(500, 100, 800, 60, true)]
    [InlineData(500, 51, 800, 60, true)]
    [InlineData(500, 49, 800, 60, false)]
    [InlineData(500, 149, 800, 60, true)]
    [InlineData(500, 151, 800, 60, false)]
    [InlineData(399, 0, 800, 60, false)]
    [InlineData(401, 0, 800, 60, true)]
    [InlineData(100, 68.9, 102, 60, true)]
    [InlineData(100, 28, 102, 60, false)]
    [InlineData(100, 100, 400, 79, false)]
    [InlineData(100, 100, 400, 81, true)]
    [InlineData(500, 100, -1, 60, false)]
    [InlineData(500, 500, 0, 60, true)]
    [InlineData(500, 100, double.NaN, 60, false)]
    [InlineData(10, 10, 800, 95, true)]
    public void A_beam_is_believed_where_it_closes_with_the_rest(double global, double diffuse, double beam, double zenithDeg, bool holds) =>
        Assert.Equal(holds, BeamClosure.HoldsIn(global, diffuse, beam, zenithDeg));

    // Light that follows the sun so many minutes after its stamp is found to.
    [Theory]
    [InlineData(30)]
    [InlineData(-30)]
    [InlineData(0)]
    [InlineData(185)]
    [InlineData(-300)]
    [InlineData(690)]
    public void The_sun_says_how_far_the_stamps_are_off(int minutes)
    {
        var sun = new SunTrack(Here, Grids.Start.AddDays(-2), Grids.Start.AddDays(62));
        double[] Light(int count) => Grids.Of(count, i => i % 50 == 7 ? double.NaN : sun.Horizontal(Grids.Start.AddHours(i - Here.ZoneHours).AddMinutes(minutes)));
        var (shift, correlation) = new SunFitter(Grids.Hourly((WeatherField.Global, Light(24 * 60))), sun, Here.ZoneHours).Find(0, 24 * 60);
        Assert.Equal(minutes, shift);
        Assert.Equal(1, correlation, 1e-9);
        var (part, _) = new SunFitter(Grids.Hourly((WeatherField.Global, Light(24 * 60))), sun, Here.ZoneHours).Find(24 * 20, 24 * 40);
        Assert.Equal(minutes, part);
        // 48 hours of which one is missing are too few to tell.
        Assert.True(double.IsNaN(new SunFitter(Grids.Hourly((WeatherField.Global, Light(48))), sun, Here.ZoneHours).Find(0, 48).ShiftMin));
        Assert.False(double.IsNaN(new SunFitter(Grids.Hourly((WeatherField.Global, Light(49))), sun, Here.ZoneHours).Find(0, 49).ShiftMin));
    }

    private static (MissingFields Missing, List<string> Repairs) Of(double[]? cloud)
    {
        var repairs = new List<string>();
        return (new(Here, Start, Air, new(), "an agency", repairs) { Cloud = cloud }, repairs);
    }
}
