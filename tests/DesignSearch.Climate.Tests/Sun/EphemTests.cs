using System.Diagnostics;
using System.Globalization;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Compares with an astronomy library that knows nothing of this project.</summary>
public sealed class EphemTests
{
    private const int Instants = 10_000;

    private const string Program = """
        import sys, math, ephem
        for line in sys.stdin:
            lat, lon, when = line.split(';')
            o = ephem.Observer()
            o.lat, o.lon, o.elevation, o.pressure, o.date = lat, lon, 0, 0, when.strip()
            s = ephem.Sun(o)
            print(f"{math.degrees(s.alt):.7f};{math.degrees(s.az):.7f}")
        """;

    [SkippableFact]
    public void Ten_thousand_instants_agree()
    {
        var python = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        python.ArgumentList.Add("-c");
        python.ArgumentList.Add(Program);
        var random = new XoshiroStream(20, RandomPurpose.Days, 0);
        var cases = Enumerable.Range(0, Instants).Select(_ => (
            Lat: Math.Round(-65 + 130 * random.NextUnit(), 4),
            Lon: Math.Round(-180 + 360 * random.NextUnit(), 4),
            When: new DateTime(2000, 1, 1).AddSeconds(Math.Floor(random.NextUnit() * 60 * 365.25 * 86400)))).ToArray();

        var answers = Ask(python, cases.Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Lat};{c.Lon};{c.When:yyyy/MM/dd HH:mm:ss}")));
        if (answers.Length != Instants)
        {
            Assert.False(Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1", "python3-ephem is not installed");
            Skip.If(true, "python3-ephem is not installed");
        }

        var worst = 0.0;
        for (var i = 0; i < Instants; i++)
        {
            var parts = answers[i].Split(';');
            var theirs = new SunAngles(90 - double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture));
            worst = Math.Max(worst, Places.AngleDeg(Places.Sun(Places.At(cases[i].Lat, cases[i].Lon), cases[i].When), theirs));
        }

        Validation.Within("sun ephem 10000", "largest angle between directions, 2000 to 2060, latitudes −65 to 65 [°]", 0, 0.01, worst, "python3-ephem of Debian", "SunPosition.Seen");
    }

    private static string[] Ask(ProcessStartInfo start, IEnumerable<string> questions)
    {
        try
        {
            using var process = Process.Start(start)!;
            var answers = process.StandardOutput.ReadToEndAsync();
            try
            {
                foreach (var question in questions)
                    process.StandardInput.WriteLine(question);
                process.StandardInput.Close();
            }
            catch (IOException)
            {
                // The program ended early because the library is missing; its empty answer says so.
            }

            process.WaitForExit();
            return answers.Result.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return [];
        }
    }
}
