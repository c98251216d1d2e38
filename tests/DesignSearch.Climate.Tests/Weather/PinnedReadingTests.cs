using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>
/// What is read of a made sky in every format, whole and damaged in eight ways: figures, faults, doubts and repairs, as they were when they were last looked at. After a
/// change that was meant, read what the test wrote beside what it wrote before, and put the digests in. Hours that had to be made here are left out.
/// </summary>
public sealed class PinnedReadingTests
{
    private static readonly string[] Whole =
    [
        "plain 6f5bf072", "tmy3 4a360ced", "pvgis 19618b5a", "pvgis hours 2798f42f", "nsrdb 844e6f03", "half hours 43ede2d8", "nasa c0f92d3f", "era5 85f8eae3",
        "isd-lite 50908761", "global hourly ff2682d4", "days 62d7bd22", "json 001cb904",
    ];

    private static readonly string[] Damaged =
    [
        "plain 2d89c55a", "tmy3 fbb970d4", "pvgis de42b4e2", "pvgis hours 1e8a6d3e", "nsrdb 9199eb47", "half hours a564b1dd", "nasa 21402b48", "era5 bfb652ee",
        "isd-lite d9568d82", "global hourly d60a2b3f", "days 39f452cd", "json f1ee3af2",
    ];

    private static readonly string[] OneWay =
    [
        "plain 8c486b69", "tmy3 283370dd", "pvgis 8554db2b", "pvgis hours c62f94f9", "nsrdb 2f9d932c", "half hours edb0da4b", "nasa 1196e42a", "era5 6ee2c4ad",
        "isd-lite b9314077", "global hourly 0d6aa4d5", "days 20ba0152", "json fb9817af",
    ];

    private static readonly string[] Mounts = ["planes eb99590d"];

    private static readonly MadeSky Sky = new();

    internal static readonly (string Name, string Text)[] Formats =
    [
        ("plain", Sky.Plain()), ("tmy3", Sky.Tmy3()), ("pvgis", Sky.PvgisTypical(means: true, 0)), ("pvgis hours", Sky.PvgisHourly()), ("nsrdb", Sky.Nsrdb(60, 30)), ("half hours", Sky.Nsrdb(30)),
        ("nasa", Sky.Nasa()), ("era5", Sky.Era5()), ("isd-lite", Head + Sky.IsdLite()), ("global hourly", Sky.GlobalHourly()), ("days", Head + Sky.Daily("months")), ("json", Sky.PvgisTypicalJson(indented: true)),
    ];

    // The south's winter lies in the middle of the year; line 3000 of hours is early in May.
    private static readonly (string Name, Func<List<string>, IEnumerable<string>> Do)[] Damages =
    [
        ("whole", l => l),
        ("short gaps", l => l.Where((_, i) => i < 60 || i % 701 > 5)),
        ("a long gap", l => l.Where((_, i) => i < Part(l, 0.4) || i > Part(l, 0.46))),
        ("gaps of all lengths", l => l.Where((_, i) => i < 60 || i % 400 > i / 250)),
        ("letters in figures", l => l.Select((x, i) => i > 60 && i % 1999 == 7 ? x.Replace('1', 'x') : x)),
        ("two rows exchanged", l => l.Select((x, i) => i == Part(l, 0.5) ? l[i + 2] : i == Part(l, 0.5) + 2 ? l[i - 2] : x)),
        ("a row twice", l => l.SelectMany((x, i) => i == Part(l, 0.3) ? [x, x] : new[] { x })),
        ("standing still", l => l.Select((x, i) => i > Part(l, 0.55) && i < Part(l, 0.56) ? Tail(l[Part(l, 0.55)], x) : x)),
        ("cut short", l => l.Take(Part(l, 0.7))),
    ];

    private const string Head = "# latitude: -44.2\n# longitude: 169.8\n# elevation_m: 420\n# zone_hours: 11\n";

    [SkippableFact]
    public void Pinned_what_is_read_of_a_made_sky_that_is_whole() => Pinned(Whole, Told(Damages[..1]));

    // On any day each format in one way of its own.
    [SkippableFact]
    public void Pinned_what_is_read_of_a_made_sky_damaged_in_one_way() =>
        Pinned(OneWay, [.. Formats.Select((f, i) => (Format: f, Damage: Damages[1 + (i % (Damages.Length - 1))])).AsParallel().AsOrdered().Select(p => (p.Format.Name, $"{p.Damage.Name}: {Told(string.Join('\n', p.Damage.Do([.. p.Format.Text.Split('\n')])))}"))]);

    [SkippableFact]
    public void Pinned_what_is_read_of_a_made_sky_damaged_in_eight_ways()
    {
        Skip.IfNot(Longer.IsOn, "A long run (DESIGNSEARCH_LONG=1); the whole sky is read on any day.");
        Pinned(Damaged, Told(Damages[1..]));
    }

    [SkippableFact]
    public void Pinned_what_falls_on_planes_of_every_mount() => Pinned(Mounts, [("planes", Planes())]);

    private static List<(string Name, string Text)> Told((string Name, Func<List<string>, IEnumerable<string>> Do)[] damages) =>
        [.. Formats.AsParallel().AsOrdered().Select(f => (f.Name, string.Concat(damages.Select(d => $"{d.Name}: {Told(string.Join('\n', d.Do([.. f.Text.Split('\n')])))}\n"))))];

    private static void Pinned(string[] pinned, List<(string Name, string Text)> texts)
    {
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");
        var digests = texts.Select(t => t.Name + " " + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(t.Text)))[..8]).ToList();
        if (pinned.SequenceEqual(digests))
            return;
        var folder = Directory.CreateTempSubdirectory("designsearch-pinned-").FullName;
        foreach (var (name, text) in texts)
            File.WriteAllText(Path.Combine(folder, name.Replace(' ', '-') + ".txt"), text);
        Assert.Fail($"moved: {string.Join("; ", digests.Except(pinned))}. The texts are in {folder}. Now they are \"{string.Join("\", \"", digests)}\"");
    }

    private static int Part(List<string> lines, double share) => (int)(lines.Count * share);

    // The stamp of one row, the figures of another.
    private static string Tail(string figures, string stamp) => figures.Length > 16 && stamp.Length > 16 ? stamp[..16] + figures[16..] : stamp;

    internal static string Told(string text)
    {
        try
        {
            var r = TempFile.Read(text);
            var told = new StringBuilder(FormattableString.Invariant($"{r.Source}; {r.Period}; {r.IsTypicalYear}; {r.Start:u}; {r.Place.LatitudeDeg} {r.Place.LongitudeDeg} {r.Place.ElevationM} {r.Place.ZoneHours}; {r.Hours} h; "));
            told.Append(string.Join("; ", r.Unknown)).Append("; doubts ").AppendJoin("; ", r.Doubts).Append("; repairs ").AppendJoin("; ", r.Repairs).Append('\n');
            foreach (var (field, hours) in new[] { (WeatherField.Air, r.AirC), (WeatherField.DewPoint, r.DewPointC), (WeatherField.Wind, r.WindMPerS), (WeatherField.Global, r.GlobalWPerM2), (WeatherField.Diffuse, r.DiffuseWPerM2) })
            {
                told.Append(field).Append(' ').Append(r.SharesInWords(field)).Append(": ");
                for (var h = 0; h < hours.Length; h += 7)
                {
                    if (r.Origins[field][h] != FieldOrigin.Synthesised)
                        told.Append(Figure(hours[h])).Append(' ');
                }

                told.Append('\n');
            }

            foreach (var m in r.Summary.Months)
                told.Append(FormattableString.Invariant($"{m.Month}: {Figure(m.MeanC)} {Figure(m.LowestC)} {Figure(m.FrostHours)}; "));
            return told.AppendJoin(' ', new[] { r.Summary.FrostHours, r.Summary.ColdestDayC, r.Summary.ColdestThreeDaysC, r.Summary.ColdestWeekC }.Select(Figure)).Append('\n').ToString();
        }
        catch (InputException e)
        {
            return string.Join('\n', e.Faults.Select(f => $"{f.Line}:{f.Column}: {f.Value}: {f.Expected}"));
        }
    }

    // Every kind of mount about every axis, in a winter of the made sky, under a bare horizon and one with hills.
    private static string Planes()
    {
        var told = new StringBuilder();
        var winter = WinterMaker.FromRecord(TempFile.Read(Sky.Tmy3()), new SeasonDates(5, 1, 9, 30), new())[0];
        foreach (var hours in new[] { winter.SunZenithDeg, winter.SunAzimuthDeg, winter.ExtraterrestrialNormalWPerM2, winter.GroundReflectance })
            told.AppendJoin(' ', hours.Where((_, h) => h % 11 == 0).Select(Figure)).Append('\n');
        told.Append(winter.Ground).Append(' ').AppendJoin(' ', winter.Remarks).Append('\n');
        var random = new Random(5);
        foreach (var horizon in new[] { null, new HorizonProfile([(0, 5), (60, 12), (120, 8), (180, 0), (240, 20), (300, 15)]) })
        {
            var cache = new PlaneCache(200_000_000, horizon);
            foreach (var kind in Enum.GetValues<MountKind>())
            {
                foreach (var axis in Enum.GetValues<MountAxis>())
                {
                    var plane = cache.Get(winter, new Mount(kind, axis, random.Next(10, 80), random.Next(-60, 60), random.Next(10, 60), 3 + (4 * random.NextDouble()), random.Next(2, 7)) { DeadBandDeg = random.Next(1, 6) });
                    told.Append(FormattableString.Invariant($"{kind} {axis}: {plane.Moves} moves, {plane.TravelDeg:0.0}, {plane.KwhPerM2(720):0.0000}; "));
                    foreach (var hours in new[] { plane.BeamWPerM2, plane.SkyWPerM2, plane.GroundWPerM2, plane.CosIncidence })
                        told.AppendJoin(' ', hours.Where((_, h) => h % 13 == 0).Select(Figure)).Append('\n');
                }
            }
        }

        return told.ToString();
    }

    private static string Figure(double value) => (Math.Abs(value) < 1e-9 ? 0 : value).ToString("G7", CultureInfo.InvariantCulture);
}
