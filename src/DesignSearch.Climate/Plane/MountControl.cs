namespace DesignSearch.Climate.Plane;

/// <summary>Turns a mount the way a simple wired control would: light sensor, timer, limit switches.</summary>
internal static class MountControl
{
    /// <summary>Where the mount stands in every hour of a winter.</summary>
    /// <remarks>
    /// Two positions: at rest in the morning position; a timer that starts at dawn swings it over after the mount's switch hours;
    /// dusk brings it home. Stepped: goes to the next of its equal steps when the sun has passed half-way, home at dusk. Continuous:
    /// follows the sun's turn about the axis inside its limits, home at dusk. A day shorter than the timer has no swing.
    /// </remarks>
    /// <param name="light">The winter's light works the sensor.</param>
    /// <param name="mount">The mount.</param>
    public static MountSchedule Schedule(WinterLight light, Mount mount)
    {
        var winter = light.Winter;
        var log = new MoveLog(winter, mount.Kind == MountKind.Fixed ? 0 : -mount.LimitAngleDeg);
        if (mount.Kind == MountKind.TwoPosition)
            SwingByTimer(log, mount, light.Days(mount.Sensor));
        else if (mount.Kind is MountKind.Stepped or MountKind.Continuous)
            FollowSun(log, light, mount);
        return log.Finish();
    }

    private static void SwingByTimer(MoveLog log, Mount mount, IReadOnlyList<DayLight> days)
    {
        foreach (var day in days)
        {
            if (day.Dawn + mount.SwitchHours >= day.Dusk)
                continue;
            log.Move(day.Dawn + mount.SwitchHours, mount.LimitAngleDeg);
            log.Move(day.Dusk, -mount.LimitAngleDeg);
        }
    }

    private static void FollowSun(MoveLog log, WinterLight light, Mount mount)
    {
        var frame = new PlaneFrame(mount, light.Winter.Place.LatitudeDeg);
        var reach = Math.Abs(mount.LimitAngleDeg);
        var step = mount.Kind == MountKind.Stepped ? 2 * reach / (mount.Steps - 1) : 0;
        foreach (var day in light.Days(mount.Sensor))
        {
            for (var h = (int)Math.Ceiling(day.Dawn - 0.5); h + 0.5 < day.Dusk; h++)
            {
                var turn = frame.TurnTowards(light.SunAt(h)) * 180 / Math.PI;
                turn = Math.Clamp(turn * (mount.LimitAngleDeg < 0 ? -1 : 1), -reach, reach);
                if (step > 0)
                    turn = Math.Round((turn + reach) / step) * step - reach;
                log.Follow(h, turn, step > 0 ? 1 : Math.Max(1, (int)Math.Ceiling(Math.Abs(turn - log.Turn) / mount.DeadBandDeg)));
            }

            log.Move(day.Dusk, -mount.LimitAngleDeg);
        }
    }
}
