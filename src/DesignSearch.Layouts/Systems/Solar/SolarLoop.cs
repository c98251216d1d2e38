using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>The solar plant of a layout: the chosen parts and what was worked out from them.</summary>
public sealed record SolarLoop
{
    /// <summary>What is dialled in.</summary>
    public required SolarDials Dials { get; init; }

    /// <summary>The collector.</summary>
    public required Collector Collector { get; init; }

    /// <summary>How many of them.</summary>
    public required int Count { get; init; }

    /// <summary>Gross area of all [m²].</summary>
    public required double AreaM2 { get; init; }

    /// <summary>What carries them.</summary>
    public required CollectorMount Mount { get; init; }

    /// <summary>Frames, each with its own drive where it turns.</summary>
    public required int Frames { get; init; }

    /// <summary>What the storm does to a frame, and what holds it.</summary>
    public required Stand Stand { get; init; }

    /// <summary>The drive of each frame; null when none.</summary>
    public required Drive? Drive { get; init; }

    /// <summary>Whether a relay counts the hours from dawn to the swing; else a clock is set month by month.</summary>
    public required bool HasDelayRelay { get; init; }

    /// <summary>Whether its end switches stand in the coils of the interlock, with cables back to the box.</summary>
    public bool StopsCutCoils { get; init; }

    /// <summary>Seal of the turning shaft; null for the cheapest that serves.</summary>
    public required SmallPart? ShaftSeal { get; init; }

    /// <summary>How the collector is kept from freezing.</summary>
    public required FreezeProtection Protection { get; init; }

    /// <summary>The tank.</summary>
    public required Tank Tank { get; init; }

    /// <summary>How many of it stand side by side.</summary>
    public required int TankCount { get; init; }

    /// <summary>Its jacket; null without one.</summary>
    public required TankJacket? Jacket { get; init; }

    /// <summary>The long pipe.</summary>
    public required Pipe Pipe { get; init; }

    /// <summary>Its length from collector to tank, one way [m].</summary>
    public required double PipeRunM { get; init; }

    /// <summary>
    /// The metal pipe next to the collector; the same as <see cref="Pipe"/> where that is metal; null where the catalogue has none.
    /// </summary>
    public required Pipe? FirstMetres { get; init; }

    /// <summary>Insulation of the long pipe; null without.</summary>
    public required PipeInsulation? Insulation { get; init; }

    /// <summary>
    /// Insulation of the first metres, which must bear the heat of a dry collector; the long pipe's own where that does; null where none
    /// fits or the pipe is bare.
    /// </summary>
    public required PipeInsulation? FirstInsulation { get; init; }

    /// <summary>Fluid in collectors and pipes [L].</summary>
    public required double LoopLitres { get; init; }

    /// <summary>The pump.</summary>
    public required Pump Pump { get; init; }

    /// <summary>Where pump and pipes settle.</summary>
    public required LoopFlow Flow { get; init; }

    /// <summary>How hot it becomes in the states of the plant; the tank's ceiling and the lock-out among it.</summary>
    public required LoopHeat Heat { get; init; }

    /// <summary>The controller of the pump; null where the catalogue has none that can hold it back as wanted.</summary>
    public required SolarController? Controller { get; init; }

    /// <summary>Antifreeze of a loop that stays full; null for any other, and where the catalogue has none that is strong enough.</summary>
    public required Antifreeze? Fluid { get; init; }

    /// <summary>The loop where it is closed; null where it runs empty.</summary>
    public required ClosedWater? ClosedLoop { get; init; }

    /// <summary>Each closed tank; null where they stand open.</summary>
    public required ClosedWater? ClosedTank { get; init; }

    /// <summary>Height of the drain-back's own vessel above the tank's water [m]; 0 where all runs back to the tank.</summary>
    public required double VesselAboveTankM { get; init; }

    /// <summary>Height of the collector's lower edge above what its water runs back to [m].</summary>
    public required double FallM { get; init; }

    /// <summary>The heat release.</summary>
    public required HeatRelease Release { get; init; }

    /// <summary>Pieces, or metres, of it.</summary>
    public required double ReleaseCount { get; init; }

    /// <summary>Heat it gives per kelvin [W/K].</summary>
    public required double ReleaseWPerK { get; init; }

    /// <summary>Pump of the release; null where the catalogue has none that is strong enough.</summary>
    public required Pump? ReleasePump { get; init; }

    /// <summary>Voltage of the solar controller, which is that of the pump it switches [V].</summary>
    public double ControllerVolts => Pump.Volts >= SupplyPlan.MainsVolts ? SupplyPlan.MainsVolts : SupplyPlan.ControlVolts;

    /// <summary>Voltage of the release's thermostat, which switches the fan, or the pump where there is none [V].</summary>
    public double ThermostatVolts => (Release.FanWatts == 0 ? Math.Max(Release.Volts, Pump.Volts) : Release.Volts) >= SupplyPlan.MainsVolts
        ? SupplyPlan.MainsVolts
        : SupplyPlan.ControlVolts;

    /// <summary>Whether the loop is filled with antifreeze and stays full.</summary>
    public bool StaysFull => Protection.Method == FreezeMethod.Antifreeze;

    /// <summary>Whether valves let its water out every evening.</summary>
    public bool IsDrainedByValves => Protection.Method == FreezeMethod.DrainedByValves;

    /// <summary>How many things are closed and under pressure: the loop where it stays full, and every closed tank.</summary>
    public int ClosedCount => (ClosedLoop is null ? 0 : 1) + (ClosedTank is null ? 0 : TankCount);

    /// <summary>Coldest collector that it bears [°C]: antifreeze by the worse of what the fluid and what its kit is made for.</summary>
    public double ProtectsToC => Math.Max(Protection.ProtectsToC, StaysFull ? Fluid?.FreezesC ?? 0 : Protection.ProtectsToC);

    /// <summary>Whether nothing outdoors bursts when its water freezes: a collector made for it, and plastic pipe without metal.</summary>
    public bool MayFreeze => Collector.IsFreezeSafe && !Pipe.IsMetal && FirstMetres == Pipe;

    /// <summary>Pieces of the heat release that stand by themselves; a bare pipe is one, however long.</summary>
    public double ReleasePieces => Release.Unit == PartUnit.Metre ? 1 : ReleaseCount;

    /// <summary>Whether the first metres want a metal pipe that the catalogue lacks.</summary>
    public bool LacksFirstMetres => Collector.IsGlazed && FirstMetres is null;

    /// <summary>Whether its frames turn, by a drive or by hand.</summary>
    public bool Turns => Mount.Turning != TurningKind.Fixed;

    /// <summary>Whether someone turns its frames by hand.</summary>
    public bool IsTurnedByHand => Turns && Drive is null;

    /// <summary>Whether the catalogue lacks what holds the stand to the ground or the frame where it stands.</summary>
    public bool LacksHoldfasts =>
        (Stand.Anchor is null && (Mount.Founding is Founding.Feet or Founding.Wall))
        || (Turns && (Stand.Stops is null || Stand.Bolt is null));

    /// <summary>True when pump and fan of the release bring day heat into the tank.</summary>
    public bool Gathers => Dials.GatherAboveC > 0;

    /// <summary>Whether one thermostat must switch a fan and a pump of different voltage.</summary>
    public bool IsRelayed => Release.FanWatts > 0 && ReleasePump is { } pump && pump.Volts != Release.Volts;
}
