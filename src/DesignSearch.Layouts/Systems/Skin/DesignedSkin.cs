using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>The skin of one layout.</summary>
internal sealed class DesignedSkin(Skin skin, Greenhouse house, CoverMotors? motors) : DesignedSystem
{
    public override IEnumerable<string> Words => SkinWords.Title(skin);

    public override IEnumerable<Circuit> Circuits => motors?.Circuits ?? [];

    public override IEnumerable<Caution> Cautions => SkinWords.Cautions(skin, house.HasSingleSheet);

    public override IEnumerable<Upkeep> Upkeep => SkinWords.Upkeep(skin);

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => SkinWords.Steps(ground);

    public override Installation Install(Installation plant) => plant with { House = skin.On(plant.House, house) };

    public override IEnumerable<Dial> Dials(Scenario scenario)
    {
        if (skin.NightCover is { } cover)
            yield return new(SkinWords.NightCover, SkinWords.NightCoverSetting(cover.Drive));
        if (motors is { ByClock: true })
            yield return new(SkinWords.Timer, SkinWords.TimerSetting(CoverTimes.Of(scenario.Place, scenario.Season)));
        if (skin.PerimeterBoard is { } edge)
            yield return new(SkinWords.PerimeterBoard, SkinWords.Trench(edge.DepthM, edge.ThicknessMm));
    }

    public override void List(Needs needs)
    {
        if (skin.Lining is { Transmittance: > 0 } lining)
            needs.Add(lining, CoverM2 * NeededPart.Cuts, SkinWords.Lining);
        else if (skin.Lining is { } board)
            needs.Add(board, Skin.ShadedWallM2(house) * NeededPart.Cuts, SkinWords.WallBoard);
        if (skin.NightCover is { } cover)
            NightCover(cover.IsAutomatic, needs);
        if (skin.Sealing is { } sealing)
            needs.Add(sealing, Math.Ceiling(house.FloorM2 / sealing.FloorUpToM2), SkinWords.Sealing);
        if (skin.PerimeterBoard is { } edge)
            needs.Add(edge, house.PerimeterM, SkinWords.PerimeterBoard);
        if (skin.WindBreak is { } shelter)
            needs.Add(shelter, house.LengthM + house.WidthM, SkinWords.WindBreak);
    }

    private double CoverM2 => house.LinedM2;

    private void NightCover(bool isAutomatic, Needs needs)
    {
        needs.Add(skin.NightCover!, CoverM2 * NeededPart.Cuts, SkinWords.NightCover);
        if (!isAutomatic)
            return;
        if (motors is null)
            needs.Small(SmallPartRole.CoverMotor, 1, SkinWords.CoverMotor, SupplyPlan.ControlVolts);
        else
            motors.List(needs);
        needs.Small(SmallPartRole.CoverWires, CoverM2, SkinWords.CoverWires);
    }

    public override void Draw(SchemeSketch sketch)
    {
        sketch.Put(SkinWords.Lining, SkinWords.LiningName, Symbol.Plain, Spot.Skin);
        sketch.Put(SkinWords.WallBoard, SkinWords.LiningName, Symbol.Plain, Spot.Skin);
        sketch.Put(SkinWords.Sealing, SkinWords.SealsName, Symbol.Plain, Spot.Skin);
        sketch.Put(SkinWords.PerimeterBoard, SkinWords.EdgeName, Symbol.Plain, Spot.Skin);
        sketch.Put(SkinWords.WindBreak, SkinWords.WindBreakName, Symbol.Plain, Spot.Outdoors);
        if (motors is null)
        {
            sketch.Put(SkinWords.NightCover, SkinWords.CoverName, Symbol.Plain, Spot.Skin);
            return;
        }

        var screen = sketch.Put(SkinWords.NightCover, SkinWords.CoverName, Symbol.Plain, Spot.Skin, Terminal.Turned);
        sketch.Add(screen, SkinWords.CoverWires);
        var sensor = sketch.PutTeller(SkinWords.LightSensor, SkinWords.LightSensorName, Symbol.LightSensor, Spot.Skin)
            ?? sketch.PutTeller(SkinWords.Timer, SkinWords.TimerName, Symbol.Clock);
        var interlock = sketch.PutControl(SkinWords.Interlock, SkinWords.InterlockName, Symbol.Relay);
        sketch.Add(interlock, SkinWords.HandSwitch);
        sketch.Tell(sensor, interlock);
        IReadOnlyList<string> names = [.. motors.Circuits.Select(c => c.Device)];
        var screens = sketch.PutEach(SkinWords.CoverMotor, names, Symbol.Motor, Spot.Skin, Terminal.Turns, Terminal.Power, Terminal.Told);
        foreach (var each in screens)
        {
            sketch.Join(each, Terminal.Turns, screen, Terminal.Turned);
            sketch.Tell(interlock, each);
        }
    }
}
