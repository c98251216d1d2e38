using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Rules of a solar plant.</summary>
public static class SolarRules
{
    /// <summary>Room for the collectors.</summary>
    public static CheckRule Space { get; } = new("collector-space", "space for collectors", "The site's own limit");

    /// <summary>Collectors on one frame.</summary>
    public static CheckRule MountArea { get; } = new("mount-area", "area that one frame carries", "The catalogue's figure for the mount");

    /// <summary>The stand in a storm.</summary>
    public static CheckRule MountWind { get; } = new(
        "mount-wind",
        "storm on the stand",
        "The local code first; EN 1991-1-4: 7.4.3 signboard, c_f 1.80, or 7.4.1 wall for a steep plate; 7.3, table 7.6, up to 30°; "
        + "ρv²/2 of a gust, or 4.5 exposure factor for a mean wind, ρ 1.25 kg/m³");

    /// <summary>How far it turns.</summary>
    public static CheckRule TurnLimit { get; } = new("turn-limit", "turn to either side", "The catalogue's figure for the mount");

    /// <summary>The drive against working wind.</summary>
    public static CheckRule DriveTorque { get; } = new(
        "drive-torque",
        "torque of the drive",
        "The local code first; EN 1991-1-4, 7.4.3 and 7.3: c_f as for the storm, a quarter of the chord across the axis off it; "
        + "friction µPd/2 (bearing makers' tables); half as much in hand: common practice, no source");

    /// <summary>The drive against a gust.</summary>
    public static CheckRule DriveHolding { get; } = new(
        "drive-holding",
        "holding until the stops take the load",
        "EN 1991-1-4, 7.4.3 and 7.3, as for the drive's torque; a gust half as fast again: common practice, no source");

    /// <summary>Frost in the collector.</summary>
    public static CheckRule Freezing { get; } = new(
        "collector-freezing",
        "collector on the coldest night",
        "Radiation to a clear sky: utility advice on solar freezing; antifreeze: the worse of kit and fluid, Melinder 2010");

    /// <summary>The pipe at a dry collector.</summary>
    public static CheckRule FirstMetres { get; } = new(
        "first-metres",
        "pipe next to the dry collector",
        "Stagnation from the collector's certificate (ISO 9806)");

    /// <summary>The long pipe at the ceiling.</summary>
    public static CheckRule PipeRating { get; } = new(
        "pipe-rating",
        "heat in the long pipe",
        "The catalogue's rating of the pipe; boiling by Antoine's equation; full sun 1000 W/m², losses left out");

    /// <summary>The sleeve on its pipe.</summary>
    public static CheckRule InsulationFit { get; } = new("insulation-fit", "insulation on the pipe", "The catalogue's figures");

    /// <summary>Filling an empty loop.</summary>
    public static CheckRule PumpLift { get; } = new("pump-lift", "lifting water into the empty collector", "Hydrostatics");

    /// <summary>Flow through the collectors.</summary>
    public static CheckRule PumpFlow { get; } = new(
        "pump-flow",
        "flow through the collectors",
        "Pipe friction after Colebrook; 0.006 to 0.015 kg/s per m² is common practice, no source");

    /// <summary>Running empty.</summary>
    public static CheckRule DrainFall { get; } = new(
        "drain-fall", "water running back by itself", "Installers' guidance on drain-back slope");

    /// <summary>The hottest water.</summary>
    public static CheckRule TankHeat { get; } = new("tank-heat", "heat in the tank", "Simulated; the catalogue's ratings");

    /// <summary>The feet in a storm.</summary>
    public static CheckRule Anchorage { get; } = new(
        "anchorage",
        "feet in a storm",
        "The local code first; moment and lift by EN 1991-1-4, 7.4.3 and 7.3; EN 1990, table A1.2(A): wind × 1.5, weight that rights "
        + "× 0.9; the anchor's pull is the builder's test, else the catalogue's figure");

    /// <summary>Holding without current.</summary>
    public static CheckRule DriveLocking { get; } = new(
        "drive-locking", "holding without current", "A gearbox maker's published advice; a locking bolt by the catalogue's figure");

    /// <summary>Time from stop to stop.</summary>
    public static CheckRule TurningTime { get; } = new(
        "turning-time",
        "time for the whole turn",
        "The catalogue's speed; ten minutes, so that a rising wind does not catch it half way: own choice");

    /// <summary>The sleeves in heat.</summary>
    public static CheckRule InsulationHeat { get; } = new(
        "insulation-heat",
        "insulation on hot pipe",
        "The catalogue's ratings; stagnation from the collector's certificate (ISO 9806)");

    /// <summary>Relief, expansion and vent.</summary>
    public static CheckRule Pressure { get; } = new(
        "pressure-safety",
        "relief, expansion and vent",
        "Vessel (taken + reserve)(pe + 1)/(pe − p0), EN 12828 form; a solar loop's with its steam: a maker's planning manual; "
        + "the local code decides");

    /// <summary>Direction of the collector.</summary>
    public static CheckRule FacesSun { get; } = new(
        "faces-sun",
        "collector looks towards the noon sun",
        "The sun's path: outside the tropics the noon sun is always on the side of the equator");

    /// <summary>Wind in which a frame turns.</summary>
    public static CheckRule WorkingWind { get; } = new("mount-working-wind", "wind in which the frame still turns", "The catalogue's figure for the mount");

    /// <summary>Frost in the collector while the current is out.</summary>
    public static CheckRule UnpoweredFrost { get; } = new(
        "freezing-power-cut",
        "collector on a cold night without current",
        "The catalogue's word on what the protection does without current; a power cut comes with the storm: common practice, no source");

    /// <summary>The tank under the roof.</summary>
    public static CheckRule Headroom { get; } = new("tank-headroom", "tank under the roof", "The catalogue's height of the tank; the house's own ridge");

    /// <summary>The stand about the foot of its footing.</summary>
    public static CheckRule Overturning { get; } = new(
        "overturning",
        "weight that keeps the stand upright",
        "The local code first (EN 1997 and its annex for the ground); EN 1990, table A1.2(A), EQU: 0.9 × what rights ≥ 1.5 × what tips, "
        + "about the foot of the footing; wind by EN 1991-1-4, 7.4.3 and 7.3; concrete 24 kN/m³, grip of ballast 0.4: from memory");

    /// <summary>The frame in a storm.</summary>
    public static CheckRule StormLock { get; } = new(
        "storm-lock",
        "frame that the storm would turn",
        "The local code first; EN 1991-1-4, 7.4.3 and 7.3: a quarter of the chord off the axis; the catalogue's stops and bolt");

    /// <summary>The pump at a collector that has stood in the sun.</summary>
    public static CheckRule HotStart { get; } = new(
        "hot-start",
        "no start on a hot collector",
        "5 K under what pipe and sleeve bear (own choice), never above 95 °C (common practice, no source); the controller's range");

    /// <summary>Open and closed that go together.</summary>
    public static CheckRule OpenTank { get; } =
        new("open-tank", "tank for a loop that runs empty", "A closed tank under pressure lets no air in");

    /// <summary>The pump's inlet.</summary>
    public static CheckRule PumpInlet { get; } = new(
        "pump-inlet",
        "hot water at the pump's inlet",
        "Net positive suction head, 0.6 m more than the pump needs (pump makers' practice); ISO 2533 air, Antoine's boiling");

    /// <summary>What gathers day heat.</summary>
    public static CheckRule GatheringFan { get; } = new("gathering-fan", "fan that gathers day heat", "Still air gives a coil a tenth of its heat: common practice, no source");

    /// <summary>Its set point against bought heat and vents.</summary>
    public static CheckRule GatheringSet { get; } = new(
        "gathering-set", "day heat for the tank apart from bought heat and vents", "3 K above every thermostat, 2 K below the vents: common practice, no source");

    /// <summary>All of them, in the order in which a search counts them.</summary>
    public static IReadOnlyList<CheckRule> All { get; } =
    [
        Space, MountArea, MountWind, TurnLimit, DriveTorque, DriveHolding, Freezing, FirstMetres, PipeRating, InsulationFit, PumpLift,
        PumpFlow, DrainFall, TankHeat, Anchorage, DriveLocking, TurningTime, InsulationHeat, Pressure, FacesSun,
        WorkingWind, UnpoweredFrost, Headroom, Overturning, StormLock, HotStart, OpenTank, PumpInlet,
        GatheringFan, GatheringSet,
    ];
}
