using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class RecordWintersTests
{
    private static readonly SeasonDates North = new(11, 1, 3, 31);

    [Fact]
    public void A_typical_year_goes_round_at_new_year()
    {
        var record = Record(new DateTime(2001, 1, 1), 365, typical: true);
        var winter = Assert.Single(WinterMaker.FromRecord(record, North, new()));
        Assert.Equal((WinterKind.Typical, new DateTime(2001, 10, 2), 720, 151 * 24), (winter.Kind, winter.Start, winter.WarmUpHours, winter.SeasonHours));
        Assert.Equal(record.AirC[8759], winter.AirC[(30 + 61) * 24 - 1]);
        Assert.Equal(record.AirC[0], winter.AirC[(30 + 61) * 24]);
    }

    [Fact]
    public void Several_years_give_a_winter_for_each_whole_pair()
    {
        var record = Record(new DateTime(2019, 1, 1), 366 + 3 * 365, typical: false);
        var winters = WinterMaker.FromRecord(record, North, new());
        Assert.Equal(["2019-2020", "2020-2021", "2021-2022"], winters.Select(w => w.Name));
        Assert.All(winters, w => Assert.Equal(WinterKind.Recorded, w.Kind));
        Assert.Equal(152 * 24, winters[0].SeasonHours);
        Assert.Equal(151 * 24, winters[1].SeasonHours);
        Assert.Equal(record.AirC[(int)(winters[1].Start - record.Start).TotalHours], winters[1].AirC[0]);
    }

    [Fact]
    public void One_calendar_year_is_joined_and_says_so()
    {
        var record = Record(new DateTime(2020, 1, 1), 366, typical: false);
        var winter = Assert.Single(WinterMaker.FromRecord(record, North, new()));
        Assert.Equal(WinterKind.Joined, winter.Kind);
        Assert.Contains(winter.Remarks, r => r.Contains("2020", StringComparison.Ordinal) && r.Contains("New Year", StringComparison.Ordinal));
        Assert.Equal(151 * 24, winter.SeasonHours);
    }

    [Fact]
    public void A_southern_winter_lies_whole_in_one_year()
    {
        var record = Record(new DateTime(2021, 1, 1), 365, typical: false);
        var winter = Assert.Single(WinterMaker.FromRecord(record, new(5, 1, 9, 30), new()));
        Assert.Equal((WinterKind.Recorded, "2021", 153 * 24), (winter.Kind, winter.Name, winter.SeasonHours));
    }

    [Fact]
    public void A_record_that_starts_late_shortens_the_warm_up()
    {
        var record = Record(new DateTime(2021, 10, 25), 200, typical: false);
        var winter = Assert.Single(WinterMaker.FromRecord(record, North, new()));
        Assert.Equal(7 * 24, winter.WarmUpHours);
        Assert.Contains(winter.Remarks, r => r.Contains("warm-up", StringComparison.Ordinal));
    }

    [Fact]
    public void Snow_on_the_ground_sets_the_reflectance()
    {
        var record = Record(new DateTime(2001, 1, 1), 365, typical: true);
        var winter = WinterMaker.FromRecord(record, North, new() { SnowReflectance = 0.7, SnowCoverByMonth = [.. Enumerable.Range(1, 12).Select(m => m == 12 ? 0.5 : 0)] })[0];
        Assert.Equal(0.2, winter.GroundReflectance[0], 1e-12);
        Assert.Equal(0.45, winter.GroundReflectance[(30 + 40) * 24], 1e-12);
    }

    private static WeatherRecord Record(DateTime start, int days, bool typical)
    {
        var hours = days * 24;
        double[] Make(Func<int, double> of) => [.. Enumerable.Range(0, hours).Select(of)];
        var months = Enumerable.Range(1, 12).Select(m => new MonthSummary(m, 10 - 8 * Math.Cos((m - 7) * Math.PI / 6), 0, 1, 0, 2)).ToArray();
        return new()
        {
            Place = new("made", 45, 10, 200, 1),
            Source = "made",
            Period = "made",
            IsTypicalYear = typical,
            Start = start,
            AirC = Make(h => h * 0.001),
            DewPointC = Make(h => h * 0.001 - 2),
            WindMPerS = Make(_ => 2),
            GlobalWPerM2 = Make(_ => 0),
            DiffuseWPerM2 = Make(_ => 0),
            BeamNormalWPerM2 = Make(_ => 0),
            Origins = new Dictionary<WeatherField, FieldOrigin[]>(),
            SunFit = new(0, 0, 0),
            Repairs = [],
            Summary = new(months, 0, 0, 0, 0),
        };
    }
}
