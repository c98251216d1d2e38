using System.Globalization;
using System.Text;
using DesignSearch.Climate.Weather;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Each damage ends in a repair that is said or in one clear sentence, never in a wrong number.</summary>
public sealed class DamageTests
{
    private static readonly MadeSky Sky = new();
    private static readonly string Whole = Sky.Tmy3();
    private static readonly string[] Lines = Whole.Split('\n');
    private static readonly Lazy<WeatherRecord> Sound = new(() => TempFile.Read(Whole));

    public static TheoryData<string, string> Repaired => new()
    {
        { "duplicated hour", "1 row repeats the time of an earlier row and was left out, the first in line 501." },
        { "missing code -9900", "97 h of missing air temperature were filled from the hours around them (97 gaps, the longest 4 January 18:00)." },
        { "three hours missing", "3 h of missing air temperature were filled from the hours around them (16 June 15:00 to 16 June 17:00)." },
        { "words in cells", "10 cells hold no number, the first 'error' in line 3; they were taken as gaps." },
        { "kelvin", "The air temperature was taken as kelvin, since every value is above 150." },
        { "fraction humidity", "The humidity was taken as a fraction of 1, since no value is above 1." },
        { "light by night", "33 rows have light while the sun is down; it was left out." },
        { "zeros at noon", "52 rows have no light at all with the sun well up: gaps written as zero, filled from the days around them." },
        { "too bright", "4 rows have more light than there is above the atmosphere; they were taken as gaps." },
        { "sensor fault code", "9 values of the air temperature cannot be, the first 85 in line 3; they were taken as gaps." },
        { "beam of another sun", "The beam column does not close with global and diffuse (rms 100 W/m²); the beam was rebuilt from them with the mid-hour sun and capped." },
        { "half an hour late", "The sun says that the stamps are 30 min off what this format means; the light was moved by 30 min." },
    };

    public static TheoryData<string> Harmless => ["re-saved by a spreadsheet", "midnight as 00:00", "semicolons", "UTF-16", "leap day", "rows out of order", "padded with commas", "CRLF", "dates as year-month-day", "blank lines between"];

    public static TheoryData<string, string> Refused => new()
    {
        { "cut short", "5000:0: : no gap longer than 48 h; the rows from 28 July 07:00 to 1 January 00:00 are missing" },
        { "cut within a row", "5001:0: 0.: at least 12 fields; the row has 6 (cut short?)" },
        { "no column", "2:0: : a column 'GHI' (global irradiance on the level)" },
        { "Fahrenheit", "0:0: : air temperature in °C: 2475 values are outside -60 to 55, the first 55.6 in line 9 (is it °F?)" },
        { "km/h", "0:0: : wind in m/s: its mean is 10.0 (is it km/h?)" },
        { "kilowatts", "0:0: : global irradiance in W/m²: its highest is 0.92 (is it kW/m² or MJ/m²?)" },
        { "half the light", "0:0: : global irradiance in W/m²: its clearest hours bring 52 % of the light of a clear sky (another unit, a tilted or shaded sensor, or another column?)" },
        { "half as much light again", "0:0: : global irradiance in W/m²: its clearest hours bring 155 % of the light of a clear sky (another unit, a tilted or shaded sensor, or another column?)" },
        { "no head", "1:0: : latitude and longitude in the file; name the place in the scenario and read the file with --for RUN" },
        { "latitude sign", "0:0: 44.2: the latitude of the light in the file: its summer is that of -44.2 (south is negative)" },
        { "longitude sign", "0:0: -169.8: a longitude the light agrees with: 169.8 would (west is negative); or the stamps are of UTC+12.5" },
        { "wrong zone", "0:0: UTC+5: a zone of the stamps the light agrees with: it runs 360 min behind the clock; UTC+11 fits" },
        { "two clocks", "4394:0: : one clock through the whole file; about 3 July the light runs 55 min off the rest (two zones, or daylight saving?)" },
        { "four days gone", "4000:0: : no gap longer than 48 h; the rows from 16 June 15:00 to 20 June 15:00 are missing" },
        { "a third missing", "0:0: : at most 10 % of the air temperature of a month missing; 33 % are missing in month 1" },
        { "decimal commas", "3:48: 80: no more fields than the 12 column names (decimal commas?)" },
        { "serial dates", "3:1: 44197 01:00: a date and time as MM/DD/YYYY hh:mm" },
        { "empty", "0:0: : a weather file that is not empty" },
        { "something else", "1:0: name,value: a format that can be read: the file has nothing of any of them." },
        { "latitude in words", "1:28: 44 south: a latitude from −90 to 90 in degrees, south negative" },
    };

    [Theory]
    [MemberData(nameof(Repaired))]
    public void Is_repaired_and_said(string damage, string said)
    {
        var record = TempFile.Read(Hurt(damage));
        Assert.Contains(said, record.Repairs);
        AgreesWithSound(record, damage == "half an hour late" ? 0.05 : 0.02);
    }

    [Theory]
    [MemberData(nameof(Harmless))]
    public void Is_read_all_the_same(string damage)
    {
        var record = TempFile.Read(Hurt(damage), encoding: damage == "UTF-16" ? Encoding.Unicode : null);
        AgreesWithSound(record, 0.005);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Is_refused_in_a_clear_sentence(string damage, string said)
    {
        var faults = TempFile.Faults(Hurt(damage));
        Assert.StartsWith(said, string.Create(CultureInfo.InvariantCulture, $"{faults[0].Line}:{faults[0].Column}: {faults[0].Value}: {faults[0].Expected}"), StringComparison.Ordinal);
        Assert.InRange(faults.Count, 1, 13);
    }

    // The zone is asked for the place and for the stamps.
    [Fact]
    public void A_zone_that_is_none_is_told_once() => Assert.Equal(["15.0"], TempFile.Faults(Whole.Replace(",11.0,", ",15.0,", StringComparison.Ordinal)).Select(f => f.Value));

    [Fact]
    public void A_missing_file_is_one_sentence() =>
        Assert.Contains("of this name; there is none", Assert.Single(Assert.Throws<DesignSearch.Files.InputException>(() => WeatherFile.Read("no-such-file.csv")).Faults).Expected, StringComparison.Ordinal);

    private static void AgreesWithSound(WeatherRecord record, double ghi)
    {
        Assert.Equal(Sound.Value.Hours, record.Hours);
        foreach (var (expected, ours) in Sound.Value.Summary.Months.Zip(record.Summary.Months))
        {
            Assert.Equal(expected.MeanC, ours.MeanC, 0.08);
            Assert.Equal(expected.GhiKwhPerM2Day, ours.GhiKwhPerM2Day, Math.Max(0.005, ghi * expected.GhiKwhPerM2Day));
        }
    }

    private static string Hurt(string damage) => damage switch
    {
        "duplicated hour" => Join(Lines.Take(500).Append(Lines[499]).Concat(Lines.Skip(500))),
        "missing code -9900" => Column("Dry-bulb (C)", (i, x) => i % 90 == 0 ? "-9900" : x),
        "three hours missing" => Join(Lines.Where((_, i) => i is < 4000 or > 4002)),
        "words in cells" => Column("Dry-bulb (C)", (i, x) => i % 900 == 1 ? "error" : x),
        "kelvin" => Column("Dry-bulb (C)", (_, x) => Text(Value(x) + 273.15)),
        "fraction humidity" => Column("RHum (%)", (_, x) => Text(Value(x) / 100)),
        "light by night" => Column("GHI (W/m^2)", (i, x) => i % 24 == 1 && i % 11 == 0 ? "20" : x),
        "zeros at noon" => Column("GHI (W/m^2)", (i, x) => i % 24 == 13 && i % 7 == 0 ? "0" : x),
        "too bright" => Column("GHI (W/m^2)", (i, x) => i % 24 == 13 && i % 91 == 0 ? "1650" : x),
        "sensor fault code" => Column("Dry-bulb (C)", (i, x) => i % 1000 == 1 ? "85" : x),
        "beam of another sun" => Column("DNI (W/m^2)", (_, x) => Text(Value(x) * 1.4 + 30)),
        "half an hour late" => ShiftLight(Sky.Nsrdb(30)),
        "re-saved by a spreadsheet" => Join(Lines.Select((l, i) => i < 2 ? l : Resaved(l))),
        "midnight as 00:00" => Whole.Replace(",24:00,", ",00:00,", StringComparison.Ordinal),
        "semicolons" => Whole.Replace(',', ';'),
        "UTF-16" => Whole,
        "leap day" => Join(Lines.Take(2 + 59 * 24).Concat(Lines.Skip(2 + 58 * 24).Take(24).Select(l => "02/29/2020" + l[10..])).Concat(Lines.Skip(2 + 59 * 24))),
        "rows out of order" => Join(Lines.Take(1000).Concat(Lines.Skip(3000).Take(500)).Concat(Lines.Skip(1000).Take(2000)).Concat(Lines.Skip(3500))),
        "padded with commas" => Join(Lines.Select(l => l.Length > 0 ? l + ",,,," : l)),
        "CRLF" => Whole.Replace("\n", "\r\n", StringComparison.Ordinal),
        "cut short" => Join(Lines.Take(5000)),
        "cut within a row" => Join(Lines.Take(5000)) + "\n" + Lines[5000][..25],
        "no column" => Whole.Replace("GHI (W/m^2)", "Sun (W/m^2)", StringComparison.Ordinal).Replace("GHI source", "GHI (W/m^2)x", StringComparison.Ordinal),
        "Fahrenheit" => Column("Dry-bulb (C)", (_, x) => Text(Value(x) * 1.8 + 32)),
        "km/h" => Column("Wspd (m/s)", (_, x) => Text(Value(x) * 3.6 + 1)),
        "kilowatts" => Column("GHI (W/m^2)", (_, x) => Text(Value(x) / 1000)),
        "half the light" => Column("GHI (W/m^2)", (_, x) => Text(Value(x) * 0.5)),
        "half as much light again" => Column("GHI (W/m^2)", (_, x) => Text(Value(x) * 1.5)),
        "no head" => Join(Lines.Skip(1)),
        "dates as year-month-day" => Join(Lines.Select((l, i) => i < 2 || l.Length == 0 ? l : $"{l[6..10]}-{l[..5].Replace('/', '-')}{l[10..]}")),
        "blank lines between" => Join(Lines.SelectMany(l => (string[])[l, ""])),
        "latitude sign" => Whole.Replace("-44.200", "44.200", StringComparison.Ordinal),
        "longitude sign" => Whole.Replace("169.800", "-169.800", StringComparison.Ordinal),
        "wrong zone" => Whole.Replace(",11.0,", ",5.0,", StringComparison.Ordinal),
        "two clocks" => TwoClocks(),
        "four days gone" => Join(Lines.Where((_, i) => i is < 4000 or > 4096)),
        "a third missing" => Column("Dry-bulb (C)", (i, x) => i % 3 == 0 ? "-9900" : x),
        "decimal commas" => Column("Dry-bulb (C)", (_, x) => x.Replace('.', ',')),
        "serial dates" => Column("Date (MM/DD/YYYY)", (_, _) => "44197"),
        "empty" => " \n\n",
        "latitude in words" => Whole.Replace("-44.200", "44 south", StringComparison.Ordinal),
        _ => "name,value\nfirst,1\n",
    };

    private static string ShiftLight(string text)
    {
        var lines = text.Split('\n');
        for (var i = 3; i + 1 < lines.Length && lines[i + 1].Length > 0; i++)
        {
            var (own, next) = (lines[i].Split(','), lines[i + 1].Split(','));
            (own[6], own[7], own[8]) = (next[6], next[7], next[8]);
            lines[i] = string.Join(',', own);
        }

        return Join(lines);
    }

    private static string TwoClocks()
    {
        var cells = Lines.Skip(2).Where(l => l.Length > 0).Select(l => l.Split(',')).ToArray();
        int[] light = [3, 5, 7];
        var from = 7 * 31 * 24;
        var moved = cells.Select(c => (string[])c.Clone()).ToArray();
        for (var i = from; i < from + 61 * 24; i++)
        {
            foreach (var c in light)
                moved[i][c] = cells[i + 2][c];
        }

        return Join(Lines.Take(2).Concat(moved.Select(m => string.Join(',', m))));
    }

    private static string Resaved(string line)
    {
        if (line.Length == 0)
            return line;
        var cells = line.Split(',');
        var date = cells[0].Split('/').Select(p => int.Parse(p, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture));
        (cells[0], cells[1]) = (string.Join('/', date), cells[1] == "24:00" ? "24:00:00" : cells[1].TrimStart('0'));
        return string.Join(',', cells);
    }

    private static string Column(string name, Func<int, string, string> change)
    {
        var index = Array.IndexOf(Lines[1].Split(','), name);
        return Join(Lines.Select((l, i) =>
        {
            if (i < 2 || l.Length == 0)
                return l;
            var cells = l.Split(',');
            cells[index] = change(i - 1, cells[index]);
            return string.Join(',', cells);
        }));
    }

    private static double Value(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Join(IEnumerable<string> lines) => string.Join('\n', lines);
}
