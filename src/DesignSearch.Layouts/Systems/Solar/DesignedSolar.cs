using DesignSearch.Climate.Plane;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Physics;
using DesignSearch.Season;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>The solar plant of one layout.</summary>
/// <param name="loop">Its parts and what was worked out from them.</param>
public sealed class DesignedSolar(SolarLoop loop) : DesignedSystem
{
    // What a frame gives that is left in its morning place one day in three (estimate, no source).
    private const double LeftStanding = 0.9;

    private readonly Mount mount = SolarNumbers.MountOf(loop);

    /// <summary>Its parts and what was worked out from them.</summary>
    public SolarLoop Loop => loop;

    /// <summary>How the collector turns: "fixed", "two-position", "stepped" or "continuous".</summary>
    public string TurningWord => SolarWords.Turning(loop.Mount.Turning);

    /// <inheritdoc/>
    public override bool LacksParts => loop.ReleasePump is null || loop.LacksFirstMetres || loop.LacksHoldfasts;

    /// <inheritdoc/>
    public override double StoreFloorM2 => loop.TankCount * loop.Tank.FootprintM2;

    /// <inheritdoc/>
    public override FloorLoad? FloorLoad => new(SolarWords.Store, (loop.Tank.VolumeL + loop.Tank.EmptyKg) / loop.Tank.FootprintM2);

    /// <inheritdoc/>
    public override Mount? Mount => mount;

    /// <inheritdoc/>
    public override double HeatsToC => loop.Dials.ReleaseSetC;

    /// <inheritdoc/>
    public override IEnumerable<string> Words => [SolarWords.Title(loop)];

    /// <inheritdoc/>
    public override IEnumerable<Circuit> Circuits => SolarCircuits.Of(loop);

    /// <inheritdoc/>
    public override IEnumerable<Caution> Cautions => SolarCautionWords.Of(loop);

    /// <inheritdoc/>
    public override IEnumerable<PlantDoubt> Doubts => loop.IsTurnedByHand
        ? [new(
            new(SolarWords.Hand, 1, LeftStanding, 1, SolarWords.HandWhy, SolarWords.LeftStanding),
            (plant, share) => plant with { Collector = WithLess(plant.Collector, share) })]
        : [];

    /// <inheritdoc/>
    public override IEnumerable<Upkeep> Upkeep => SolarUpkeepWords.Of(loop);

    /// <inheritdoc/>
    public override IEnumerable<LogColumn> Log => SolarPaperWords.Log(loop);

    /// <inheritdoc/>
    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground)
    {
        ArgumentNullException.ThrowIfNull(ground);
        return SolarPaperWords.Steps(loop, ground);
    }

    /// <inheritdoc/>
    public override IEnumerable<EnquiryFact> Enquiry(PaperGround ground) => SolarPaperWords.Enquiry(loop);

    /// <inheritdoc/>
    public override Installation Install(Installation plant)
    {
        ArgumentNullException.ThrowIfNull(plant);
        return SolarNumbers.Install(plant, loop);
    }

    /// <inheritdoc/>
    public override void List(Needs needs)
    {
        ArgumentNullException.ThrowIfNull(needs);
        SolarListing.List(loop, needs);
    }

    /// <inheritdoc/>
    public override double ExtraKwh(PlaneIrradiance? plane) => loop.Drive is { } drive && plane is not null
        ? plane.TravelDeg / drive.SpeedDegPerS * drive.Watts * loop.Frames / Energy.JoulesPerKwh
        : 0;

    /// <inheritdoc/>
    public override IEnumerable<Check> Checks(Conditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        var checks = new List<Check>(SolarRules.All.Count);
        MountChecks.Add(loop, conditions.Scenario.Site, checks);
        LoopChecks.Add(loop, conditions, checks);
        checks.Add(SunCheck.Of(loop.Dials.AzimuthDeg, conditions.Scenario.Place.LatitudeDeg));
        return checks;
    }

    /// <inheritdoc/>
    public override IEnumerable<Check> ListChecks(Conditions conditions, BuiltLayout built)
    {
        ArgumentNullException.ThrowIfNull(built);
        var checks = MountChecks.OfList(loop, built.Parts).Concat(Gathering.OfPlant(loop, built));
        return PressureCheck.Of(loop, built.Parts) is { } check ? checks.Append(check) : checks;
    }

    /// <inheritdoc/>
    public override IEnumerable<Dial> Dials(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return SolarSettings.Of(loop, scenario);
    }

    /// <inheritdoc/>
    public override void Draw(SchemeSketch sketch)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        SolarScheme.Draw(loop, sketch);
    }

    /// <inheritdoc/>
    public override IEnumerable<Body> Bodies(Scenario scenario) => SolarBodies.Of(loop);

    /// <inheritdoc/>
    public override StandPlan? Frame(IReadOnlyList<NeededPart> parts) => SolarBodies.Frame(loop, parts);

    private static CollectorNumbers WithLess(CollectorNumbers collector, double share) => collector with { Eta0Beam = share * collector.Eta0Beam };
}
