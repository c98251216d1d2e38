namespace DesignSearch.Climate.Plane;

/// <summary>Brings the sun of a winter onto a plane that stands or turns.</summary>
internal static class PlaneModel
{
    /// <summary>Beam, sky and ground light on a mount's plane, hour by hour.</summary>
    /// <remarks>
    /// A horizon takes the beam and the light around the sun when the sun is behind it, and its share of the even sky. Weather that
    /// already knows its hills must not be given a horizon again. Where snow lies on the plane nothing reaches it.
    /// </remarks>
    /// <param name="light">The winter's light.</param>
    /// <param name="mount">The mount.</param>
    public static PlaneIrradiance For(WinterLight light, Mount mount)
    {
        var bare = Bare(light, mount);
        return light.Winter.Snow is null ? bare : UnderSnow(bare, SnowOnPlane.Covered(light.Winter, mount.TiltDeg, bare));
    }

    private static PlaneIrradiance UnderSnow(PlaneIrradiance bare, double[] covered)
    {
        double[] Left(double[] of) => [.. of.Zip(covered, (light, share) => light * (1 - share))];
        return new()
        {
            BeamWPerM2 = Left(bare.BeamWPerM2),
            SkyWPerM2 = Left(bare.SkyWPerM2),
            GroundWPerM2 = Left(bare.GroundWPerM2),
            CosIncidence = bare.CosIncidence,
            Moves = bare.Moves,
            TravelDeg = bare.TravelDeg,
        };
    }

    private static PlaneIrradiance Bare(WinterLight light, Mount mount)
    {
        var winter = light.Winter;
        var frame = new PlaneFrame(mount, winter.Place.LatitudeDeg);
        var n = winter.Hours;
        var (beam, sky, ground, cosine) = (new double[n], new double[n], new double[n], new double[n]);
        if (mount.Kind == MountKind.Fixed)
        {
            var still = frame.Normal(0);
            for (var i = 0; i < light.Hour.Length; i++)
            {
                var h = light.Hour[i];
                (beam[h], sky[h], ground[h], cosine[h]) = Falling(light, i, still);
            }

            return new() { BeamWPerM2 = beam, SkyWPerM2 = sky, GroundWPerM2 = ground, CosIncidence = cosine, Moves = 0, TravelDeg = 0 };
        }

        var schedule = MountControl.Schedule(light, mount);
        var (turn, normal) = (double.NaN, default(Vector));
        for (var i = 0; i < light.Hour.Length; i++)
        {
            var h = light.Hour[i];
            if (schedule.TurnDeg[h] != turn)
                (turn, normal) = (schedule.TurnDeg[h], frame.Normal(schedule.TurnDeg[h] * Math.PI / 180));
            (beam[h], sky[h], ground[h], cosine[h]) = Falling(light, i, normal);
            if (schedule.ShareBefore[h] >= 1)
                continue;
            (turn, normal) = (schedule.LaterTurnDeg[h], frame.Normal(schedule.LaterTurnDeg[h] * Math.PI / 180));
            var later = Falling(light, i, normal);
            var a = schedule.ShareBefore[h];
            (beam[h], sky[h], ground[h]) = (a * beam[h] + (1 - a) * later.Beam, a * sky[h] + (1 - a) * later.Sky, a * ground[h] + (1 - a) * later.Ground);
            cosine[h] = a * Math.Max(0, cosine[h]) + (1 - a) * Math.Max(0, later.Cosine);
        }

        return new() { BeamWPerM2 = beam, SkyWPerM2 = sky, GroundWPerM2 = ground, CosIncidence = cosine, Moves = schedule.Moves, TravelDeg = schedule.TravelDeg };
    }

    private static (double Beam, double Sky, double Ground, double Cosine) Falling(WinterLight light, int i, Vector normal)
    {
        var cosine = normal.Dot(light.Sun[i]);
        var (beam, sky, ground) = light.Light[i].On(cosine, normal.Up);
        return (beam, sky, ground, cosine);
    }
}
