using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>What is dangerous about a solar plant, in words. Each defers to local codes and licensed work.</summary>
internal static class SolarCautionWords
{
    private static readonly Caution Pressure = Of("Pressure", """
        A closed loop or tank needs a relief valve, an expansion vessel and nothing to shut between collector and relief;
        never plug a valve that weeps. Closed stores are licensed work in many places.
        """) with { Harm = Harm.Kills };

    private static readonly Caution Legionella = Of("Legionella", """
        Store water at 20 to 45 °C breeds legionella: keep it closed, label it as not for drinking or washing, never spray or
        mist with it, fill it only over a gap of air or through a backflow stop, drain it when it stands idle for weeks.
        """);

    private static readonly Caution FixedInWind = Of("Wind", """
        A collector is a sail, and the wind lifts as hard as it pushes. Footings or ground screws after the local wind zone;
        ask whether consent is needed.
        """);

    private static readonly Caution ByHandInWind = Of("Wind", """
        A turning collector is a sail on a hinge. Between two turns the bolt holds it, never a hand or a rope; leave it alone in
        wind, and keep children away from it. Stops, bolt and footing after the local wind zone.
        """);

    private static readonly Caution TurnedByHand = Of("Turned by hand", """
        The season is reckoned as if someone turned the frame on time every sunny day and back at dusk. Who is at work at noon
        should take a drive or a fixed stand; what a frame left standing costs is told under "How sure?".
        """);

    private static readonly Caution TurningInWind = Of("Wind", """
        A turning collector is a sail on a hinge. End stops or a bolt take the storm, not the gear. Keep fingers and children
        out of the way of a frame that moves by itself; switch it off before working on it, and bolt it before a gale.
        """);

    private static readonly Caution Lifting = Of("Lifting collectors", """
        Two people and no wind, covered from the sun; nobody below.
        """);

    private static readonly Caution Snow = Of("Snow on the collectors", """
        It loads stand and footing, and slides off all at once: brush it off from the ground, keep paths clear of their lower edge,
        and leave room below for what comes down.
        """);

    public static IEnumerable<Caution> Of(SolarLoop solar)
    {
        yield return HotWater(solar.Collector.StagnationC);
        if (solar.ClosedCount > 0)
            yield return Pressure;
        yield return Legionella;
        yield return solar.IsTurnedByHand ? ByHandInWind : solar.Turns ? TurningInWind : FixedInWind;
        if (solar.IsTurnedByHand)
            yield return TurnedByHand;
        if (solar.Stand.FrostGivenM is null && solar.Mount.Founding is (Founding.Feet or Founding.Post))
            yield return FrostInTheGround;
        yield return Snow;
        yield return Lifting;
        yield return Dangers.Height;
        if (solar.Collector.IsGlazed)
            yield return Dangers.Glass;
        yield return Dangers.WeightAndDrowning;
    }

    private static readonly Caution FrostInTheGround = Of("Frost in the ground", Written.Sentence($"""
        Ground that freezes lifts what does not reach below it. No depth is given (frost_depth_m), so that footings and screws are
        reckoned to {SiteLimits.UsualFrostM:0.0} m, which is a guess: ask the building office before you dig.
        """));

    private static Caution HotWater(double stagnationC) => Of("Hot water and steam", Written.Sentence($"""
        Dry in the sun this collector reaches {stagnationC:0} °C. Fill it only when it is cool or covered, and never defeat
        the controller's lock-out. Steam must always have an open way out. Above 60 °C metal burns the hand at a touch.
        """));

    private static Caution Of(string topic, string text) => new(topic, text.ReplaceLineEndings(" "));
}
