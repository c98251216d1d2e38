using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class PlaneModelTests
{
    private const string Pvlib = "pvlib-python, tracking.singleaxis without backtracking";

    [Theory]
    [InlineData("polar north 20", 44, 0, 68, 20, 21.5008, 47.4473, 27.5600)]
    [InlineData("polar north 45", 44, 0, 75, 45, 18.1513, 59.9926, 56.1027)]
    [InlineData("polar south 135", 30, 180, 30, 135, 7.286245, 35.98741, 142.65730)]
    public void Plane_turned_about_its_slope_looks_where_the_library_says(string id, double tilt, double faces, double zenith, double azimuth, double theta, double surfaceTilt, double surfaceAzimuth)
    {
        var frame = new PlaneFrame(new(MountKind.Continuous, MountAxis.Sloping, tilt, faces, 90), faces == 0 ? -44 : 40);
        var sun = Vector.Towards(zenith, azimuth);
        var normal = frame.Normal(frame.TurnTowards(sun));
        Validation.Equal($"plane B2 {id} incidence", "incidence [°]", theta, Math.Acos(normal.Dot(sun)) * 180 / Math.PI, 1e-3, Pvlib, "PlaneFrame.Normal");
        Validation.Equal($"plane B2 {id} tilt", "tilt of the turned plane [°]", surfaceTilt, Math.Acos(normal.Up) * 180 / Math.PI, 1e-3, Pvlib, "PlaneFrame.Normal");
        Validation.Equal($"plane B2 {id} azimuth", "azimuth of the turned plane [°]", surfaceAzimuth, (Math.Atan2(normal.East, normal.North) * 180 / Math.PI + 360) % 360, 1e-3, Pvlib, "PlaneFrame.Normal");
    }

    [Theory]
    [InlineData("level axis north-south east", MountAxis.Sloping, 0, 180, 90, 60, 90, 0, 60, 90)]
    [InlineData("level axis north-south held at 45", MountAxis.Sloping, 0, 180, 45, 60, 90, 15, 45, 90)]
    [InlineData("level axis north-south", MountAxis.Sloping, 0, 0, 90, 68, 20, 60.6063, 40.2489, 90)]
    [InlineData("level axis east-west noon", MountAxis.Level, 0, 180, 90, 30, 180, 0, 30, 180)]
    [InlineData("level axis east-west", MountAxis.Level, 0, 0, 90, 68, 20, 18.4886, 66.7344, 0)]
    public void Plane_turned_about_a_level_axis_looks_where_the_library_says(string id, MountAxis axis, double tilt, double faces, double limit, double zenith, double azimuth, double theta, double surfaceTilt, double surfaceAzimuth)
    {
        var frame = new PlaneFrame(new(MountKind.Continuous, axis, tilt, faces, limit), faces == 0 ? -44 : 40);
        var sun = Vector.Towards(zenith, azimuth);
        var turn = Math.Clamp(frame.TurnTowards(sun), -limit * Math.PI / 180, limit * Math.PI / 180);
        var normal = frame.Normal(turn);
        Validation.Equal($"plane B2 {id} incidence", "incidence [°]", theta, Math.Acos(Math.Min(1, normal.Dot(sun))) * 180 / Math.PI, 1e-3, Pvlib, "PlaneFrame.Normal");
        Validation.Equal($"plane B2 {id} tilt", "tilt of the turned plane [°]", surfaceTilt, Math.Acos(normal.Up) * 180 / Math.PI, 1e-3, Pvlib, "PlaneFrame.Normal");
        Validation.Equal($"plane B2 {id} azimuth", "azimuth of the turned plane, from where it should be [°]", 0, Math.IEEERemainder(Math.Atan2(normal.East, normal.North) * 180 / Math.PI - surfaceAzimuth, 360), 1e-3, Pvlib, "PlaneFrame.Normal");
    }

    [Theory]
    [InlineData(68, 8)]
    [InlineData(75, 15)]
    public void Turning_about_a_post_leaves_the_difference_of_zenith_and_tilt(double zenith, double theta)
    {
        var frame = new PlaneFrame(new(MountKind.Continuous, MountAxis.Vertical, 60, 0, 180), -44);
        var sun = Vector.Towards(zenith, 33);
        Validation.Equal($"plane B2 post {zenith}", "incidence [°]", theta, Math.Acos(frame.Normal(frame.TurnTowards(sun)).Dot(sun)) * 180 / Math.PI, 1e-6, "analytic", "PlaneFrame.Normal");
    }

    [Theory]
    [InlineData(-44, 0, MountAxis.Sloping)]
    [InlineData(-44, 0, MountAxis.Vertical)]
    [InlineData(44, 180, MountAxis.Sloping)]
    [InlineData(44, 180, MountAxis.Vertical)]
    [InlineData(44, 200, MountAxis.Vertical)]
    [InlineData(-44, 90, MountAxis.Vertical)]
    public void The_morning_side_is_the_easterly_one(double latitude, double faces, MountAxis axis)
    {
        var frame = new PlaneFrame(new(MountKind.TwoPosition, axis, 60, faces, 30), latitude);
        var (morning, middle) = (frame.Normal(-Math.PI / 6), frame.Normal(0));
        var towardsNoon = latitude < 0 ? middle.North - morning.North : morning.North - middle.North;
        Assert.True(faces == 90 ? towardsNoon > 0 : morning.East > middle.East);
    }

    [Theory]
    [InlineData(44)]
    [InlineData(-44)]
    public void East_swapped_for_west_loses_in_both_hemispheres(double latitude)
    {
        var winter = ClearWinter.At(latitude);
        var equator = latitude < 0 ? 0 : 180;
        var (still, right, wrong) = (Total(winter, Mount.FixedAt(59, equator)), Two(30), Two(-30));
        Assert.True(right > 1.05 * still);
        Assert.True(wrong < 0.9 * still);

        double Two(double limit) => Total(winter, new(MountKind.TwoPosition, MountAxis.Sloping, 59, equator, limit));
    }

    [Fact]
    public void Two_positions_swing_by_the_timer_and_come_home_at_dusk()
    {
        var winter = ClearWinter.At(-44);
        var schedule = MountControl.Schedule(new WinterLight(winter, null), new(MountKind.TwoPosition, MountAxis.Sloping, 59, 0, 30, SwitchHours: 5));
        var days = winter.SeasonHours / 24;
        Assert.Equal(2 * days, schedule.Moves);
        Assert.Equal(2 * days * 60, schedule.TravelDeg, 1e-9);
        var dawn = DayLight.Of(winter, new()).First();
        var swing = (int)(dawn.Dawn + 5);
        Assert.Equal((-30, 30), (schedule.TurnDeg[swing], schedule.LaterTurnDeg[swing]));
        Assert.Equal(dawn.Dawn + 5 - swing, schedule.ShareBefore[swing], 1e-9);
        Assert.Equal(30, schedule.TurnDeg[swing + 1]);
        Assert.Equal(-30, schedule.TurnDeg[(int)dawn.Dusk + 1]);
    }

    [Fact]
    public void A_day_shorter_than_the_timer_has_no_swing()
    {
        var schedule = MountControl.Schedule(new WinterLight(ClearWinter.At(-44), null), new(MountKind.TwoPosition, MountAxis.Sloping, 59, 0, 30, SwitchHours: 20));
        Assert.Equal((0, 0.0), (schedule.Moves, schedule.TravelDeg));
    }

    [Fact]
    public void More_steps_come_nearer_to_following_the_sun()
    {
        var winter = ClearWinter.At(-44);
        double Steps(int n) => Total(winter, new(MountKind.Stepped, MountAxis.Sloping, 59, 0, 60, Steps: n));
        var follow = Total(winter, new(MountKind.Continuous, MountAxis.Sloping, 59, 0, 60));
        Assert.True(Steps(3) < Steps(5));
        Assert.True(Steps(5) < Steps(15));
        Assert.Equal(follow, Steps(61), 0.005 * follow);
    }

    [Fact]
    public void A_mount_that_may_not_turn_is_a_fixed_plane()
    {
        var winter = ClearWinter.At(44);
        var still = Falling.On(winter, Mount.FixedAt(59, 180));
        foreach (var kind in new[] { MountKind.TwoPosition, MountKind.Continuous })
        {
            var turning = Falling.On(winter, new(kind, MountAxis.Sloping, 59, 180, 0));
            Assert.Equal(still.BeamWPerM2, turning.BeamWPerM2);
            Assert.Equal(still.SkyWPerM2, turning.SkyWPerM2);
            Assert.Equal(0, turning.Moves);
        }
    }

    [Fact]
    public void A_motor_for_the_tilt_beats_the_fixed_tilt()
    {
        var winter = ClearWinter.At(44);
        Assert.True(Total(winter, new(MountKind.Continuous, MountAxis.Level, 59, 180, 30)) > Total(winter, Mount.FixedAt(59, 180)));
    }

    [Fact]
    public void A_flat_plane_gets_what_the_level_gets()
    {
        var winter = ClearWinter.At(44);
        var flat = Falling.On(winter, Mount.FixedAt(0, 180));
        for (var h = 0; h < winter.Hours; h++)
        {
            Assert.Equal(winter.BeamNormalWPerM2[h] * Math.Max(0, Math.Cos(winter.SunZenithDeg[h] * Math.PI / 180)), flat.BeamWPerM2[h], 1e-9);
            if (winter.SunZenithDeg[h] < 85)
                Assert.Equal(winter.DiffuseWPerM2[h], flat.SkyWPerM2[h], 1e-6);
            Assert.Equal(0, flat.GroundWPerM2[h]);
        }
    }

    [Fact]
    public void The_second_opinion_is_the_sky_of_Hay_and_Davies_hour_by_hour()
    {
        var winter = WinterMaker.Synthetic(ReferenceSites.Greensboro, new(11, 1, 3, 31), WinterKind.Typical, 2, new());
        var (perez, other) = (Falling.On(winter, Mount.FixedAt(55, 180)), Falling.On(winter, Mount.FixedAt(55, 180), null, SkySplit.HayDavies));
        for (var h = 0; h < winter.Hours; h++)
        {
            if (winter.GlobalWPerM2[h] <= 0 || winter.SunZenithDeg[h] > 85)
                continue;
            var expected = HayDavies.DiffuseWPerM2(winter.DiffuseWPerM2[h], winter.BeamNormalWPerM2[h], winter.ExtraterrestrialNormalWPerM2[h], 55, other.CosIncidence[h], winter.SunZenithDeg[h]);
            Assert.Equal(expected, other.SkyWPerM2[h], 1e-6);
        }

        Assert.Equal(perez.BeamWPerM2, other.BeamWPerM2);
        Validation.Within("plane second opinion", "plane irradiation of a winter by Hay and Davies over that by Perez, tilt 55°", 0.94, 1.01, other.KwhPerM2(winter.WarmUpHours) / perez.KwhPerM2(winter.WarmUpHours), "two published models side by side, no source for the ratio", "WinterLight");
    }

    [Fact]
    public void A_wall_of_hills_takes_the_beam()
    {
        var winter = ClearWinter.At(44);
        var open = Falling.On(winter, Mount.FixedAt(59, 180));
        var valley = Falling.On(winter, Mount.FixedAt(59, 180), new HorizonProfile([(0, 0), (70, 0), (71, 60), (289, 60), (290, 0)]));
        Assert.Equal(0, valley.BeamWPerM2.Sum());
        Assert.InRange(valley.SkyWPerM2.Sum(), 0.2 * open.SkyWPerM2.Sum(), open.SkyWPerM2.Sum());
        Assert.Equal(open.GroundWPerM2, valley.GroundWPerM2);
    }

    [Fact]
    public void The_cache_keeps_its_bound_and_gives_equal_answers()
    {
        var winter = ClearWinter.At(44);
        var cache = new PlaneCache(3L * 4 * 8 * winter.Hours);
        var mounts = Enumerable.Range(0, 20).Select(i => new Mount(MountKind.TwoPosition, MountAxis.Sloping, 30 + i, 180, 30)).ToArray();
        Parallel.ForEach(Enumerable.Range(0, 200), i => Assert.NotNull(cache.Get(winter, mounts[i % 20])));
        Assert.InRange(cache.Bytes, 1, 3L * 4 * 8 * winter.Hours);
        Assert.Same(cache.Get(winter, mounts[0]), cache.Get(winter, mounts[0] with { }));
        Assert.Equal(Falling.On(winter, mounts[3]).BeamWPerM2, cache.Get(winter, mounts[3]).BeamWPerM2);
    }

    private static double Total(Winter winter, Mount mount)
    {
        var plane = Falling.On(winter, mount);
        return Enumerable.Range(winter.WarmUpHours, winter.SeasonHours).Sum(h => plane.BeamWPerM2[h] + plane.SkyWPerM2[h] + plane.GroundWPerM2[h]);
    }

    [Fact]
    public void A_kilowatt_on_the_plane_for_an_hour_is_a_kilowatt_hour()
    {
        double[] none = [0, 0, 0];
        var falls = new PlaneIrradiance { BeamWPerM2 = [9, 700, 0], SkyWPerM2 = [9, 200, 150], GroundWPerM2 = [9, 100, 50], CosIncidence = none, Moves = 0, TravelDeg = 0 };
        Assert.Equal(1.2, falls.KwhPerM2(1), 1e-12);
    }

    // Every light sensor sees days of its own: a dull one later in the morning and earlier in the evening.
    [Fact]
    public void A_duller_sensor_sees_shorter_days()
    {
        var light = new WinterLight(ClearWinter.At(44), null);
        var (usual, dull) = (light.Days(new()), light.Days(new(120, 90)));
        Assert.Equal(usual, DayLight.Of(light.Winter, new()));
        Assert.Equal(110, dull.Count);
        Assert.All(usual.Zip(dull), d => Assert.True(d.First.Dawn < d.Second.Dawn && d.Second.Dusk < d.First.Dusk, $"{d}"));
    }
}
