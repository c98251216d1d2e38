using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Files;
using DesignSearch.Fitting.Estimate;
using DesignSearch.Fitting.Tests.Truth;
using DesignSearch.Layouts.Design.Brief;
using Xunit;

namespace DesignSearch.Fitting.Tests;

/// <summary>Logs as they come from gardens: each spoilt in one way. It is told, and what is said of the loss still holds, or nothing is said.</summary>
public sealed class SpoiltLogsTests
{
    private const int Nights = 14;

    // One house for all; its log is made once, and every test spoils a copy of its own.
    private static readonly TrueHouse Truth = new(Houses.All[0], 4242);
    private static readonly MadeLog Sound = Truth.Log(Nights, _ => 8, 45);
    private static readonly double TrueSlope = Truth.SlopeWPerK;

    private static MadeLog Copy => new(Sound.Start, [.. Sound.InsideC], [.. Sound.OutsideC], [.. Sound.HeaterW]);

    [Fact]
    public void A_sound_log_is_told_right_and_nothing_is_odd_about_it()
    {
        var fit = Houses.Fit(Truth.Scenario, ("log.csv", Sound.Csv()));
        Assert.Empty(fit.Warnings);
        Holds(fit);
    }

    [Fact]
    public void A_clock_two_hours_off_is_set_right() =>
        Told(Houses.Fit(Truth.Scenario, ("log.csv", Sound.Csv(stamp: i => Stamp(Sound.Start.AddMinutes(5 * i + 120))))), f => f.Before, "clock is 2 h fast");

    [Fact]
    public void A_clock_that_jumps_is_told() =>
        Told(Houses.Fit(Truth.Scenario, ("log.csv", Sound.Csv(stamp: i => Stamp(Sound.Start.AddMinutes(5 * i + (i < Sound.Count / 2 ? 0 : 180)))))), f => f.Before, "clock jumps");

    [Fact]
    public void Times_of_UTC_and_degrees_Fahrenheit_are_brought_home()
    {
        var log = Copy;
        for (var i = 0; i < log.Count; i++)
            (log.InsideC[i], log.OutsideC[i]) = (log.InsideC[i] * 1.8 + 32, log.OutsideC[i] * 1.8 + 32);
        var text = log.Csv(stamp: i => log.Start.AddMinutes(5 * i).AddHours(-Truth.Scenario.Place.ZoneHours).ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture) + "Z");
        var fit = Houses.Fit(Truth.Scenario, ("log.csv", text.Replace("inside_c,outside_c", "Inside (°F),Outside (°F)", StringComparison.Ordinal)));
        Holds(fit);
        Assert.Contains(fit.Before, b => b.Contains("right to about an hour", StringComparison.Ordinal));
    }

    [Fact]
    public void Three_files_with_semicolons_and_decimal_commas_are_one_log()
    {
        string Only(int column, string name) => SpoiltLogsTests.Only(column, name).Replace(',', ';').Replace('.', ',');
        var fit = Houses.Fit(Truth.Scenario, ("inside.csv", Only(1, "Temp")), ("outside-north.csv", Only(2, "Temp")), ("meter.csv", Only(3, "kWh")));
        Holds(fit);
        Assert.DoesNotContain(fit.Before, b => b.Contains("The clock of", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, 0, 120, "The clock of meter.csv stands about 2 h ahead of that of inside.csv")]
    [InlineData(0, 0, -120, "The clock of meter.csv stands about 2 h behind that of inside.csv")]
    [InlineData(0, 120, 0, "The clock of outside.csv stands about 2 h ahead of that of inside.csv")]
    [InlineData(120, 0, 0, "Against the sun the clock is 2 h fast")]
    public void A_table_whose_clock_is_two_hours_off_the_others_is_told(int inside, int outside, int meter, string words) => Told(
        Houses.Fit(Truth.Scenario, ("inside.csv", Only(1, "Temp", inside)), ("outside.csv", Only(2, "Temp", outside)), ("meter.csv", Only(3, "kWh", meter))),
        f => f.Before, words);

    [Fact]
    public void A_sensor_outside_that_the_sun_strikes_is_told()
    {
        var log = Copy;
        Every(log, (hour, i) => log.OutsideC[i] += hour is >= 9 and < 10 ? 9 : 0);
        Told(Houses.Fit(Truth.Scenario, ("log.csv", log.Csv())), f => f.Warnings, "outside sensor leaps");
    }

    [Fact]
    public void A_sensor_inside_that_the_sun_strikes_is_told_and_tells_no_sun()
    {
        var log = Copy;
        Every(log, (hour, i) => log.InsideC[i] += hour is >= 11 and < 13 ? 35 : 0);
        var fit = Houses.Fit(Truth.Scenario, ("log.csv", log.Csv()));
        Told(fit, f => f.Warnings, "inside sensor leaps");
        Assert.False(fit.Sun.IsLearnt);
    }

    [Fact]
    public void A_sensor_in_a_pot_is_refused()
    {
        var log = Copy;
        var pot = log.InsideC[0];
        for (var i = 0; i < log.Count; i++)
            log.InsideC[i] = pot += (log.InsideC[i] - pot) * 5 / 60 / 6;
        Refused(Houses.Fit(Truth.Scenario, ("log.csv", log.Csv())), "pot");
    }

    [Fact]
    public void Nights_with_gaps_are_left_out()
    {
        var log = Copy;
        Every(log, (hour, i) => log.OutsideC[i] = i / 288 is 2 or 3 or 7 && hour is > 1 and < 5 ? double.NaN : log.OutsideC[i]);
        var fit = Houses.Fit(Truth.Scenario, ("log.csv", log.Csv()));
        Holds(fit);
        Assert.Equal(3, fit.Nights.Count(n => n.Use == NightUse.NotWhole));
    }

    [Fact]
    public void Watts_that_do_not_agree_with_the_meter_are_told()
    {
        var (meter, watts) = (Sound.Csv().Trim().Split('\n'), Sound.Csv(heater: "heater_w").Trim().Split('\n'));
        var text = string.Join('\n', meter.Select((l, i) => l + "," + (i == 0 ? "heater_w" : (1.3 * double.Parse(watts[i].Split(',')[3], CultureInfo.InvariantCulture)).ToString(CultureInfo.InvariantCulture))));
        Told(Houses.Fit(Truth.Scenario, ("log.csv", text)), f => f.Warnings, "do not agree");
    }

    [Fact]
    public void A_door_ajar_from_the_ninth_day_is_another_house()
    {
        var ajar = Truth.Again(h => h with { AirChangesPerHour = h.AirChangesPerHour + 10, AirChangesPerHourPerMPerS = 3 * h.AirChangesPerHourPerMPerS });
        var fit = Houses.Fit(Truth.Scenario, ("log.csv", Spliced(ajar, day => day >= 9).Csv()));
        Told(fit, f => f.Warnings, "another house");
        var left = fit.Nights.Where(n => n.Use == NightUse.Other).ToList();
        Assert.InRange((left[0].Evening - Sound.Start).TotalDays, 7, 10);
    }

    [Fact]
    public void A_door_slightly_ajar_is_said_not_to_be_told()
    {
        var ajar = Truth.Again(h => HouseFit.Changed(h, 1.12));
        var fit = Houses.Fit(Truth.Scenario, ("log.csv", Spliced(ajar, day => day >= 9).Csv()));
        Told(fit, f => f.Before, "slightly ajar");
        var told = int.Parse(Regex.Match(fit.Before.Single(b => b.Contains("slightly ajar", StringComparison.Ordinal)), @"(\d+) %").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(told, 15, 60);
    }

    [Fact]
    public void Nights_under_snow_are_another_house()
    {
        var snow = Truth.Again(h => h with { CoverAreaM2 = 0.45 * h.CoverAreaM2, LiningTransmittance = 0.2 });
        Told(Houses.Fit(Truth.Scenario, ("log.csv", Spliced(snow, day => day is >= 5 and < 8).Csv())), f => f.Warnings, "another house");
    }

    [Fact]
    public void A_thermostat_that_clicks_faster_than_it_is_looked_at_is_told()
    {
        var text = "# heater_watts: " + Sound.HeaterW.Max().ToString("0", CultureInfo.InvariantCulture) + "\n" + Sound.Csv(15, "heater_on");
        Told(Houses.Fit(Truth.Scenario, ("log.csv", text)), f => f.Warnings, "running or resting");
    }

    [Fact]
    public void Air_of_a_station_is_refused()
    {
        var place = Truth.Scenario.Place;
        var text = string.Create(CultureInfo.InvariantCulture, $"# designsearch weather\n# latitude: {place.LatitudeDeg}\n# longitude: {place.LongitudeDeg}\n# zone_hours: {place.ZoneHours}\ntime,air_c,wind_m_per_s\n")
            + string.Concat(Enumerable.Range(0, Sound.Count / 12).Select(h => Stamp(Sound.Start.AddHours(h)) + "," + (Sound.OutsideC[12 * h] + 1.5 * Math.Sin(h / 9.0)).ToString("0.0", CultureInfo.InvariantCulture) + ",2.0\n"));
        var inside = string.Join('\n', Sound.Csv().Trim().Split('\n').Select(l => string.Join(',', l.Split(',').Where((_, c) => c != 2))));
        Refused(Houses.Fit(Truth.Scenario, ("inside.csv", inside), ("airfield.csv", text)), "station");
    }

    [Fact]
    public void Loggers_the_wrong_way_round_are_refused() =>
        Refused(Houses.Fit(Truth.Scenario, ("log.csv", Sound.Csv().Replace("inside_c,outside_c", "outside_c,inside_c", StringComparison.Ordinal))), "wrong way round");

    [Fact]
    public void One_heated_night_is_refused()
    {
        var once = new TrueHouse(Houses.All[0], 4242).Log(6, d => d == 2 ? 8 : double.NaN, 45);
        Refused(Houses.Fit(Truth.Scenario, ("log.csv", once.Csv())), "Only one night");
    }

    [Fact]
    public void Every_slip_of_every_file_is_told_at_once()
    {
        var thrown = Assert.Throws<InputException>(() => Houses.Fit(
            Truth.Scenario, ("a.csv", "time,inside_c\n2024-01-05 00:00,4\n2024-13-05 00:10,5\n"), ("b.csv", "time,Temp\n2024-01-05 00:00,4\n2024-01-05 00:10,5\n"),
            ("c.csv", "time,heater_on\n2024-01-05 00:00,1\n2024-01-05 00:10,0\n")));
        Assert.Equal(["a.csv", "b.csv", "c.csv"], thrown.Faults.Select(f => Path.GetFileName(f.File)));
        Assert.Equal(3, thrown.Faults[0].Line);
        Assert.Contains("--heater-watts", thrown.Faults[2].Expected, StringComparison.Ordinal);
    }

    private static string Stamp(DateTime at) => at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Only(int column, string name, int lateMinutes = 0) => string.Join('\n', Sound
        .Csv(stamp: i => Stamp(Sound.Start.AddMinutes(5 * i + lateMinutes))).Trim().Split('\n')
        .Select((l, i) => i == 0 ? "Date Time," + name : l.Split(',')[0] + "," + l.Split(',')[column]));

    private static void Every(MadeLog log, Action<double, int> change)
    {
        for (var i = 0; i < log.Count; i++)
            change(log.Start.AddMinutes(5 * i).TimeOfDay.TotalHours, i);
    }

    // The house is another one from noon to noon.
    private static MadeLog Spliced(MadeLog other, Func<int, bool> isOther)
    {
        var log = Copy;
        for (var i = 0; i < log.Count; i++)
        {
            if (isOther((int)Math.Floor((5 * i / 60.0 - 12) / 24)))
                (log.InsideC[i], log.HeaterW[i]) = (other.InsideC[i], other.HeaterW[i]);
        }

        return log;
    }

    private static void Told(FitResult fit, Func<FitResult, IReadOnlyList<string>> where, string words)
    {
        Assert.True(where(fit).Any(s => s.Contains(words, StringComparison.Ordinal)), $"'{words}' is not in: {string.Join(" / ", fit.Before.Concat(fit.Warnings).Append(fit.Refusal))}");
        Holds(fit);
    }

    private static void Refused(FitResult fit, string words)
    {
        Assert.Contains(words, fit.Refusal, StringComparison.Ordinal);
        Assert.Null(fit.Fit);
    }

    private static void Holds(FitResult fit)
    {
        if (!fit.IsLearnt)
            return;
        var miss = Math.Log(TrueHouse.Slope(fit.Fit!.On(Houses.Bare(Truth.Scenario)), Truth.DrawnWeather) / TrueSlope);
        Assert.True(Math.Abs(miss) < Houses.Half(fit), $"off by {miss:0.000}, told ± {Houses.Half(fit):0.000}; {string.Join(" / ", fit.Warnings)}");
    }
}
