using DesignSearch.Climate.Stations;
using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A station's twelve means as [climate]: what is written is what is read.</summary>
public sealed class ClimatePartTests
{
    [Fact]
    public void Every_station_of_the_table_reads_back_as_it_was_written()
    {
        foreach (var station in StationTable.All)
        {
            var faults = new FaultList();
            var part = new ClimatePart(station);
            var climate = Read(part.Text(["Made for a test."]), station, faults);
            Assert.True(faults.IsEmpty, station.Place.Name + ": " + string.Join("; ", Told(faults)));
            var months = climate!.Monthly!.Months;
            for (var m = 0; m < 12; m++)
            {
                Assert.Equal(station.Months[m].MeanC, months[m].MeanC, 0.051);
                // A daily low within a degree of its mean, and the sun of a polar night, are moved to what a scenario takes.
                Assert.InRange(months[m].MeanDailyLowC - station.Months[m].MeanDailyLowC, -0.21, 0.051);
                Assert.InRange(months[m].GhiKwhPerM2Day - station.Months[m].GhiKwhPerM2Day, -0.0051, 0.0201);
                Assert.Equal(station.Months[m].WindMPerS, months[m].WindMPerS, 0.051);
                Assert.Equal(station.Months[m].HumidityPercent, months[m].HumidityPercent, 0.51);
            }
        }
    }

    [Fact]
    public void The_line_of_spreads_can_be_taken_into_use()
    {
        foreach (var station in StationTable.All.Where((s, i) => s.Spread is not null && i % 5 == 0))
        {
            var faults = new FaultList();
            var written = new ClimatePart(station).Text([]);
            Assert.Contains("\n# How far single days of its typical year stray from the mean of their month.", written, StringComparison.Ordinal);
            Assert.Contains("\n# daily_mean_spread_k = [", written, StringComparison.Ordinal);
            var text = written.Replace("# daily_mean_spread_k", "daily_mean_spread_k", StringComparison.Ordinal);
            var months = Read(text, station, faults)!.Monthly!.Months;
            Assert.True(faults.IsEmpty, station.Place.Name);
            Assert.Equal(Math.Clamp(station.Spread!.MeanSdK[0], 0.3, 12), months[0].DailyMeanSdK!.Value, 0.051);
        }
    }

    [Fact]
    public void Source_terms_and_place_stand_above_it()
    {
        var text = new ClimatePart(StationTable.Nearest(44.25, -121.167, 1)[0]).Text(["TAKE CARE: told."]);
        Assert.All(
            new[] { "# Twelve means, January first, of the station Redmond Roberts Field, OR (44.25, -121.17, 933 m, UTC-8).", StationTable.Credit, StationTable.Licence, "# TAKE CARE: told.\n[climate]\n" },
            part => Assert.Contains(part, text, StringComparison.Ordinal));
        Assert.DoesNotContain("-0.0,", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 140));
    }

    private static ClimateSource? Read(string text, Station station, FaultList faults) =>
        new ClimateReading(TomlReader.ReadText(text, "s.toml", faults).Table("climate", required: true), ".", [], faults).Read(null, station.Place, null);

    private static IEnumerable<string> Told(FaultList faults)
    {
        try
        {
            faults.ThrowIfAny();
            return [];
        }
        catch (InputException e)
        {
            return e.Faults.Select(f => f.ToString());
        }
    }
}
