using DesignSearch.Layouts.Systems.DayStore;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class DayStoreJudgementTests
{
    private static readonly DayStoreJudgement Good = new(400, 450, 60, 24, 150, 3, 6.8);

    [Fact]
    public void A_sunny_winter_is_worth_it() => Assert.Equal([DayStoreVerdict.Worth], Good.Verdicts());

    [Fact]
    public void Fan_and_sun_speak_against_it_each_by_itself()
    {
        Assert.Equal([DayStoreVerdict.FanEatsIt], (Good with { FanKwh = 200 }).Verdicts());
        Assert.Equal([DayStoreVerdict.FanEatsIt], (Good with { ReturnKwh = 0, FanKwh = 0 }).Verdicts());
        Assert.Equal([DayStoreVerdict.SunTooShort], (Good with { ChargeKwh = 170 }).Verdicts());
    }

    [Fact]
    public void What_limits_it_is_told_as_well()
    {
        Assert.Equal([DayStoreVerdict.Worth, DayStoreVerdict.SoilLimits], (Good with { AirWPerMK = 7 }).Verdicts());
        Assert.Equal([DayStoreVerdict.Worth, DayStoreVerdict.AirLimits], (Good with { AirWPerMK = 1 }).Verdicts());
        Assert.Equal(1 - 400.0 / 450, Good.GroundShare, 1e-12);
        Assert.Equal(7.5, Good.Cop, 1e-12);
    }
}
