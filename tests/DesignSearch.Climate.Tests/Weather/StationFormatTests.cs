using System.Globalization;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Archives of stations, in layouts from memory of the agency's descriptions; every figure in them is made.</summary>
public sealed class StationFormatTests
{
    private static readonly MadeSky Sky = new();
    private static readonly ReadingOptions Here = new() { Place = Sky.Place };

    [Fact]
    public void Isd_lite_is_read_at_its_places()
    {
        var record = TempFile.Read(Sky.IsdLite(), Here);
        Assert.InRange(record.Hours, 8758, 8760);
        Assert.Equal("2021", record.Period);
        ByTheHour(record, 0.3);
        Assert.Equal(2.5, record.WindMPerS.Average(), 0.1);
        Assert.All(record.Origins[WeatherField.Air][24..8700], o => Assert.Equal(FieldOrigin.Measured, o));
        Assert.All(record.Origins[WeatherField.Global], o => Assert.Equal(FieldOrigin.Synthesised, o));
        Assert.Contains(record.Repairs, r => r.Contains("Kasten and Czeplak", StringComparison.Ordinal) && r.Contains("12 to 30 %", StringComparison.Ordinal));
        Assert.Contains(record.Repairs, r => r.Contains("long-wave", StringComparison.Ordinal));
        Assert.Empty(record.Doubts);
    }

    // The cover runs straight between the hours, so an hour's is the mean of its ends.
    [Fact]
    public void Light_and_sky_follow_the_cover()
    {
        var record = TempFile.Read(Sky.IsdLite(), Here);
        for (var h = 30; h < record.Hours - 30; h++)
        {
            var utc = record.Start.AddHours(h - record.Place.ZoneHours);
            var cover = (MadeSky.Oktas(utc) + MadeSky.Oktas(utc.AddHours(1))) / 16.0;
            var sine = Math.Cos(Places.Sun(record.Place, utc.AddMinutes(30)).ZenithDeg * Math.PI / 180);
            Assert.Equal(CloudSky.GlobalWPerM2(sine, cover), record.GlobalWPerM2[h], 1.0);
            var solar = utc.AddMinutes(30).TimeOfDay.TotalHours + record.Place.LongitudeDeg / 15;
            var sky = SkyTemperature.UnderCloudC(record.AirC[h], record.DewPointC[h], cover, solar, Physics.Atmosphere.PressureHPa(420));
            Assert.Equal(sky, SkyTemperature.FromLongWaveC(record.SkyLongWaveWPerM2![h]), 0.01);
        }
    }

    [Theory]
    [InlineData(30, 0, 425)]
    [InlineData(30, 4, 394.8)]
    [InlineData(30, 8, 106.25)]
    [InlineData(10, 2, 127.2)]
    public void Kasten_and_czeplak_by_hand(double altitude, double oktas, double expected) =>
        Validation.Equal(
            $"sun by cloud {altitude} deg {oktas} oktas", "global irradiance [W/m²]", expected, CloudSky.GlobalWPerM2(Math.Sin(altitude * Math.PI / 180), oktas / 8), 0.3,
            "Kasten and Czeplak, Solar Energy 24 (1980), formula from memory, by hand", "CloudSky.GlobalWPerM2");

    [Fact]
    public void Monthly_means_set_the_light_of_clouds_right()
    {
        var monthly = new MonthlyClimate(Sky.Place, [.. Enumerable.Range(1, 12).Select(m => new MonthMeans(Sky.MonthAir(m), Sky.MonthAir(m) - 5, Sky.MonthGhi(m), 2.5, 80))]);
        var record = TempFile.Read(Sky.IsdLite(), Here with { Monthly = monthly });
        foreach (var month in record.Summary.Months.Where(m => m.Month is > 1 and < 12))
            Assert.Equal(Sky.MonthGhi(month.Month), month.GhiKwhPerM2Day, 0.02 * Sky.MonthGhi(month.Month) + 0.02);
    }

    [Fact]
    public void Without_the_sky_the_daily_range_makes_the_sun()
    {
        var record = TempFile.Read(Sky.IsdLite(sky: false), Here);
        Assert.Contains(record.Repairs, r => r.Contains("daily range", StringComparison.Ordinal));
        Assert.Null(record.SkyLongWaveWPerM2);
    }

    // Seven minutes to the hour, the hour itself, special reports with bad flags and summaries of days lie in one file.
    [Fact]
    public void Global_hourly_takes_what_was_read_nearest_to_each_hour()
    {
        var record = TempFile.Read(Sky.GlobalHourly());
        Assert.Equal(("MADE FLAT, XX", -44.2, 169.8, 420.0), (record.Place.Name, record.Place.LatitudeDeg, record.Place.LongitudeDeg, record.Place.ElevationM));
        ByTheHour(record, 0.3);
        Assert.Contains(record.Repairs, r => r.Contains("whole hours", StringComparison.Ordinal));
        Assert.Contains(record.Repairs, r => r.Contains("Kasten", StringComparison.Ordinal));
        Assert.DoesNotContain(record.Repairs, r => r.Contains("jump away", StringComparison.Ordinal));
        Assert.Empty(record.Doubts);
    }

    [Theory]
    [InlineData("columns")]
    [InlineData("elements")]
    [InlineData("months")]
    public void Daily_highs_and_lows_become_hours(string layout)
    {
        var record = TempFile.Read(Sky.Daily(layout), layout == "columns" ? null : Here);
        Assert.Equal(365 * 24, record.Hours);
        foreach (var month in record.Summary.Months)
            Assert.Equal(Sky.MonthAir(month.Month), month.MeanC, 1.0);
        for (var d = 1; d < 364; d++)
        {
            var day = record.AirC[(24 * d)..(24 * d + 24)];
            Assert.Equal(Sky.Low(new DateTime(2021, 1, 1).AddDays(d)), day.Min(), 0.5);
            Assert.Equal(Sky.High(new DateTime(2021, 1, 1).AddDays(d)), day.Max(), 0.5);
        }

        Assert.Contains(record.Repairs, r => r.Contains("highs and lows", StringComparison.Ordinal) && r.Contains("2 K", StringComparison.Ordinal));
        Assert.All(record.Origins[WeatherField.Air], o => Assert.Equal(FieldOrigin.Synthesised, o));
        Assert.Empty(record.Doubts);
    }

    [Fact]
    public void Days_that_failed_a_check_of_the_agency_are_gaps()
    {
        var text = Sky.Daily("elements").Replace("20210310,TMAX,", "20210310,TMAX,9", StringComparison.Ordinal);
        text = text.Replace("20210310,TMIN,", "20210310,TMIN,7", StringComparison.Ordinal);
        var flagged = System.Text.RegularExpressions.Regex.Replace(text, "(20210310,T...,-?\\d+),,,W", "$1,,X,W");
        var record = TempFile.Read(flagged, Here);
        Assert.Contains(record.Repairs, r => r.Contains("2021-03-10", StringComparison.Ordinal));
        Assert.InRange(record.AirC[((31 + 28 + 9) * 24)..((31 + 28 + 10) * 24)].Max(), Sky.High(new DateTime(2021, 3, 10)) - 3, Sky.High(new DateTime(2021, 3, 10)) + 3);
    }

    [Fact]
    public void A_low_above_the_high_is_a_gap_and_said()
    {
        var text = System.Text.RegularExpressions.Regex.Replace(Sky.Daily("elements"), "20210310,TMIN,-?\\d+", "20210310,TMIN,333");
        Assert.Contains(TempFile.Read(text, Here).Repairs, r => r.Contains("the low is above the high", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_stations_in_one_file_are_refused()
    {
        var text = Sky.Daily("elements") + Sky.Daily("elements").Replace("XXM00099999", "XXM00088888", StringComparison.Ordinal);
        Assert.Contains(TempFile.Faults(text, Here), f => f.Value == "XXM00088888" && f.Line == 365 * 3 + 1 && f.Expected.Contains("one station", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_names_no_place_says_where_to_name_it() =>
        Assert.Contains(TempFile.Faults(Sky.IsdLite()), f => f.Expected.Contains("--for RUN", StringComparison.Ordinal));

    private static void ByTheHour(WeatherRecord record, double tolerance)
    {
        for (var h = 30; h < record.Hours - 30; h++)
            Assert.Equal(Sky.Air(record.Start.AddHours(h + 0.5)), record.AirC[h], tolerance);
    }

    // A winter of −6 °C would read as one of +2 °C.
    [Theory]
    [InlineData(-2, 10, 8, 365, "a day warmer than")]
    [InlineData(-8, 8, 5, 365, "highs and lows that lie further apart")]
    [InlineData(-8, 8, 5, 120, "highs and lows that lie further apart")]
    [InlineData(4, 10, 12, 365, "a day warmer than")]
    public void Whole_degrees_fahrenheit_are_not_taken_for_tenths(double winterC, double halfWaveK, double halfRangeK, int days, string told)
    {
        string Table(Func<double, string> cell) => "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n"
            + string.Concat(Enumerable.Range(0, days).Select(d =>
            {
                var mean = winterC + (halfWaveK * (1 - Math.Cos(2 * Math.PI * (d - 65) / 365))) + (3 * Math.Sin(1.7 * d));
                return FormattableString.Invariant(
                    $"\"XXM00099999\",\"{new DateTime(2001, 11, 10).AddDays(d):yyyy-MM-dd}\",\"44.0\",\"-93.0\",\"250\",\"MADE\",\"{cell(mean + halfRangeK)}\",\",,W\",\"{cell(mean - halfRangeK)}\",\",,W\"\n");
            }));
        Assert.InRange(TempFile.Read(Table(c => (10 * c).ToString("0", CultureInfo.InvariantCulture))).AirC.Min(), winterC - halfRangeK - 4, winterC);
        Assert.Contains(told, TempFile.Faults(Table(c => ((1.8 * c) + 32).ToString("0", CultureInfo.InvariantCulture)))[0].Expected, StringComparison.Ordinal);
    }
}
