using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What turning brings against the same plane fixed at latitude plus 15°, over the winter half-year, under an even sky.</summary>
public sealed class TurningGainTests
{
    private const string Source = "winter half-year of seven open typical-year sites, even sky, ground 0.2, worked out for this project before the code";

    [Theory]
    [InlineData("chile")]
    [InlineData("redmond")]
    [InlineData("italy")]
    [InlineData("greensboro")]
    public void Gains_lie_in_the_bands_of_real_sites(string site)
    {
        var climate = ReferenceSites.Named(site);
        var winter = WinterMaker.Synthetic(climate, site == "chile" ? new(4, 1, 9, 30) : new(10, 1, 3, 31), WinterKind.Typical, 1, new());
        var equator = climate.Place.LatitudeDeg < 0 ? 0 : 180;
        var tilt = Math.Abs(climate.Place.LatitudeDeg) + 15;
        var still = EvenSky(winter, Mount.FixedAt(tilt, equator), null);
        double Gain(Mount mount, bool noon) => 100 * (EvenSky(winter, mount, noon) / still - 1);
        Mount Two(MountAxis axis, double limit) => new(MountKind.TwoPosition, axis, tilt, equator, limit);

        Validation.Within($"turning {site} two 30", "two positions ±30° about the slope, switched at solar noon [%]", 8, 14, Gain(Two(MountAxis.Sloping, 30), true), Source, "PlaneFrame.Normal");
        Validation.Within($"turning {site} two 45", "two positions ±45° about the slope, noon [%]", 4, 11, Gain(Two(MountAxis.Sloping, 45), true), Source, "PlaneFrame.Normal");
        Validation.Within($"turning {site} two 60", "two positions ±60° about the slope, noon [%]", -6, 2, Gain(Two(MountAxis.Sloping, 60), true), Source, "PlaneFrame.Normal");
        Validation.Within($"turning {site} two 30 post", "two positions ±30° about a post, noon [%]", 9, 12, Gain(Two(MountAxis.Vertical, 30), true), Source, "PlaneFrame.Normal");
        Validation.Within($"turning {site} continuous", "continuous ±60° about the slope [%]", 12, 18, Gain(new(MountKind.Continuous, MountAxis.Sloping, tilt, equator, 60), false), Source, "PlaneFrame.Normal");
        Validation.Within($"turning {site} wired timer", "what the timer 5.5 h after dawn loses against the noon switch, points of gain", -0.5, 5, Gain(Two(MountAxis.Sloping, 30), true) - Gain(Two(MountAxis.Sloping, 30), false), "difference of our own two switches; no source", "MountControl.Schedule");
    }

    // Total of beam, even sky and ground on the plane. With the noon switch the sun's hour decides the position, not the timer.
    private static double EvenSky(Winter winter, Mount mount, bool? noonSwitch)
    {
        var frame = new PlaneFrame(mount, winter.Place.LatitudeDeg);
        var schedule = MountControl.Schedule(new WinterLight(winter, null), mount);
        var sum = 0.0;
        for (var h = winter.WarmUpHours; h < winter.Hours; h++)
        {
            if (winter.GlobalWPerM2[h] <= 0)
                continue;
            var west = Math.Sin(winter.SunAzimuthDeg[h] * Math.PI / 180) < 0;
            (double Turn, double Share)[] turns = noonSwitch == true
                ? [(west ? mount.LimitAngleDeg : -mount.LimitAngleDeg, 1.0)]
                : [(schedule.TurnDeg[h], schedule.ShareBefore[h]), (schedule.LaterTurnDeg[h], 1 - schedule.ShareBefore[h])];
            var sun = Vector.Towards(winter.SunZenithDeg[h], winter.SunAzimuthDeg[h]);
            foreach (var (turn, share) in turns)
            {
                var normal = frame.Normal(turn * Math.PI / 180);
                sum += share * (winter.BeamNormalWPerM2[h] * Math.Max(0, normal.Dot(sun)) + winter.DiffuseWPerM2[h] * (1 + normal.Up) / 2 + 0.2 * winter.GlobalWPerM2[h] * (1 - normal.Up) / 2);
            }
        }

        return sum;
    }
}
