using DesignSearch.Climate.Weather;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class FormatTests
{
    public static TheoryData<string> Formats => ["tmy3", "pvgis means", "pvgis instants", "pvgis hourly", "nsrdb 60", "nsrdb 30", "nsrdb 5", "nasa LST", "nasa UTC", "era5", "era5 +13 h", "plain", "pvgis json",
        "pvgis json by lines", "pvgis hourly json", "era5 json", "era5 json +13 h", "era5 json seconds", "era5 json seconds +13 h", "plain Z", "plain offset", "plain summer offset", "plain seconds", "plain thousandths"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void The_same_sky_reads_the_same_from_every_format(string format)
    {
        var sky = new MadeSky();
        var record = TempFile.Read(Text(sky, format));
        Assert.Equal(sky.Place.LatitudeDeg, record.Place.LatitudeDeg, 2);
        Assert.Equal(sky.Place.LongitudeDeg, record.Place.LongitudeDeg, 2);
        Assert.Equal(420, record.Place.ElevationM);
        Assert.InRange(record.Hours, 8758, 8762);
        foreach (var month in record.Summary.Months.Where(m => m.Month is > 1 and < 12))
        {
            Assert.Equal(sky.MonthAir(month.Month), month.MeanC, 0.08);
            Assert.Equal(sky.MonthGhi(month.Month), month.GhiKwhPerM2Day, 0.02);
            Assert.Equal(2.5, month.MeanWindMPerS, 0.2);
        }

        AgreesByTheHour(sky, record);
    }

    private static void AgreesByTheHour(MadeSky sky, WeatherRecord record)
    {
        var (worst, sum, count) = (0.0, 0.0, 0);
        for (var h = 48; h < record.Hours - 48; h++)
        {
            var t = record.Start.AddHours(h + sky.Place.ZoneHours - record.Place.ZoneHours);
            t = new DateTime(sky.Year, t.Month, t.Day, t.Hour, 0, 0);
            var expected = MadeSky.Mean(sky.Global, t, 60);
            worst = Math.Max(worst, Math.Abs(record.GlobalWPerM2[h] - expected));
            (sum, count) = (sum + Math.Abs(record.GlobalWPerM2[h] - expected), count + 1);
            Assert.Equal(sky.Air(t.AddMinutes(30)), record.AirC[h], 0.4);
            var cosine = Math.Cos(Places.Sun(record.Place, record.Start.AddHours(h + 0.5 - record.Place.ZoneHours)).ZenithDeg * Math.PI / 180);
            Assert.Equal(record.GlobalWPerM2[h], record.DiffuseWPerM2[h] + record.BeamNormalWPerM2[h] * Math.Max(0, cosine), 0.01);
        }

        Assert.True(sum / count < 1.5, FormattableString.Invariant($"mean difference {sum / count:0.00} W/m²"));
        Assert.True(worst < 45, FormattableString.Invariant($"largest difference {worst:0} W/m²"));
    }

    private static string Text(MadeSky sky, string format) => format switch
    {
        "tmy3" => sky.Tmy3(),
        "pvgis means" => sky.PvgisTypical(means: true, 0),
        "pvgis instants" => sky.PvgisTypical(means: false, 0.17),
        "pvgis hourly" => sky.PvgisHourly(),
        "nsrdb 60" => sky.Nsrdb(60, 30),
        "nsrdb 30" => sky.Nsrdb(30),
        "nsrdb 5" => sky.Nsrdb(5),
        "nasa LST" => sky.Nasa(),
        "nasa UTC" => sky.Nasa(utc: true),
        "era5" => sky.Era5(),
        "era5 +13 h" => sky.Era5(13 * 3600),
        "pvgis json" => sky.PvgisTypicalJson(),
        "pvgis json by lines" => sky.PvgisTypicalJson(indented: true),
        "pvgis hourly json" => sky.PvgisHourlyJson(),
        "era5 json" => sky.Era5Json(),
        "era5 json +13 h" => sky.Era5Json(offsetSeconds: 13 * 3600),
        "era5 json seconds" => sky.Era5Json(seconds: true),
        "era5 json seconds +13 h" => sky.Era5Json(seconds: true, 13 * 3600),
        "plain Z" => sky.Plain(t => MadeSky.F($"{t.AddHours(-11):yyyy-MM-ddTHH:mm:ss}Z")),
        "plain offset" => sky.Plain(t => MadeSky.F($"{t.AddHours(-14.5):yyyy-MM-dd HH:mm}-03:30")),
        // A clock with daylight saving that says so row by row.
        "plain summer offset" => sky.Plain(t => t.Month is > 3 and < 10 ? MadeSky.F($"{t:yyyy-MM-ddTHH:mm:ss.000}+1100") : MadeSky.F($"{t.AddHours(1):yyyy-MM-ddTHH:mm:ss.000}+1200")),
        "plain seconds" => sky.Plain(t => MadeSky.F($"{(t.AddHours(-11) - DateTime.UnixEpoch).TotalSeconds:0}")),
        "plain thousandths" => sky.Plain(t => MadeSky.F($"{(t.AddHours(-11) - DateTime.UnixEpoch).TotalMilliseconds:0}")),
        _ => sky.Plain(),
    };

    [Fact]
    public void A_leap_day_the_provider_leaves_out_is_filled()
    {
        var sky = new MadeSky(year: 2020);
        var record = TempFile.Read(string.Join('\n', sky.Nsrdb(30).Split('\n').Where(l => !l.StartsWith("2020,2,29,", StringComparison.Ordinal))));
        Assert.Equal(365 * 24, record.Hours);
        Assert.Contains(record.Repairs, r => r.Contains("2020-02-29", StringComparison.Ordinal));
        var day = (31 + 28) * 24;
        Assert.All(record.Origins[WeatherField.Air][day..(day + 24)], o => Assert.Equal(FieldOrigin.Filled, o));
        for (var h = day; h < day + 24; h++)
            Assert.Equal(sky.Air(record.Start.AddHours(h + 0.5)), record.AirC[h], 0.5);
    }

    [Fact]
    public void Jumping_years_make_a_typical_year()
    {
        var sky = new MadeSky();
        var text = System.Text.RegularExpressions.Regex.Replace(sky.Nsrdb(60, 30), "(?m)^2021,(\\d+),", m => (1998 + 3 * int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) % 11) + "," + m.Groups[1].Value + ",");
        var record = TempFile.Read(text);
        Assert.True(record.IsTypicalYear);
        Assert.Equal(new DateTime(2001, 1, 1), record.Start);
        Assert.Equal(sky.MonthGhi(7), record.Summary.Months[6].GhiKwhPerM2Day, 0.02);
        Assert.StartsWith("typical year", record.Period, StringComparison.Ordinal);
    }

    [Fact]
    public void Shares_of_origin_add_to_one()
    {
        var record = TempFile.Read(new MadeSky().Era5());
        Assert.Equal(1, record.Shares(WeatherField.Global).Values.Sum(), 1e-12);
        Assert.Equal(1, record.Shares(WeatherField.Air)[FieldOrigin.Modelled], 0.01);
    }

    // The provider worked it all out; what the program made itself is told from it, column by column.
    [Theory]
    [InlineData("pvgis means")]
    [InlineData("plain")]
    public void Each_quantity_says_where_it_came_from(string format)
    {
        var record = TempFile.Read(Text(new(), format));
        var read = new List<WeatherField> { WeatherField.Air, WeatherField.DewPoint, WeatherField.Wind, WeatherField.Global, WeatherField.Diffuse };
        if (format == "pvgis means")
            read.Add(WeatherField.SkyLongWave);
        Assert.Equal(read.Order(), record.Origins.Keys.Order());
        Assert.All(read, f => Assert.Equal(format == "plain" ? FieldOrigin.Measured : FieldOrigin.Modelled, record.Origins[f].Skip(48).Take(8000).Distinct().Single()));
    }

    [Fact]
    public void A_tilted_series_is_refused()
    {
        var fault = Assert.Single(TempFile.Faults(new MadeSky().PvgisHourly(slope: 35)));
        Assert.Equal((7, "35 deg."), (fault.Line, fault.Value));
        Assert.Contains("slope 0", fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_builder_can_teach_a_format_without_code()
    {
        var folder = Directory.CreateTempSubdirectory("formats");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "shed.toml"), """
                title = "The logger in the shed"
                provider = "own"
                detect = ["SHED"]
                [head]
                kind = "labels"
                [time]
                columns = [["when"]]
                patterns = ["YYYY-MM-DD hh:mm"]
                years = "real"
                [stamp]
                radiation = "starting"
                weather = "starting"
                [fields]
                air = { names = ["t_f"], unit = "F", needed = true }
                global = { names = ["sun"], unit = "kW/m2", needed = true }
                """);
            var sky = new MadeSky();
            var text = "SHED,2\nwhen,sun,t_f\n" + sky.Rows(60, t => MadeSky.F($"{t:yyyy-MM-dd HH:mm},{MadeSky.Mean(sky.Global, t, 60) / 1000:0.0000},{MadeSky.Mean(sky.Air, t, 60) * 1.8 + 32:0.00}"));
            var record = TempFile.Read(text, new() { FormatsFolder = folder.FullName, Place = sky.Place });
            Assert.Equal(sky.MonthAir(7), record.Summary.Months[6].MeanC, 0.02);
            Assert.Equal(sky.MonthGhi(7), record.Summary.Months[6].GhiKwhPerM2Day, 0.01);
            Assert.Equal("Made Flat", record.Place.Name);
            Assert.All(record.Origins[WeatherField.Diffuse], o => Assert.Equal(FieldOrigin.Synthesised, o));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_slip_in_a_format_of_ones_own_is_named()
    {
        var folder = Directory.CreateTempSubdirectory("formats");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "shed.toml"), "title = \"x\"\nprovider = \"y\"\ndetect = [\"S\"]\n[head]\nkind = \"sideways\"\n[time]\ncolumns = [[\"when\"]]\npatterns = [\"YYYY\"]\n[stamp]\n[fields]\nheat = 3\n");
            var faults = TempFile.Faults("S,1\n", new() { FormatsFolder = folder.FullName });
            Assert.Contains(faults, f => f.Line == 5 && f.Value == "sideways");
            Assert.Contains(faults, f => f.Line == 11 && f.Value == "heat");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
