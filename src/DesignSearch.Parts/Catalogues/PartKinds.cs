using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Heaters;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Skin;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Parts.Catalogues;

/// <summary>Every kind of part that a catalogue can offer. A new kind is one record and one line here.</summary>
public static class PartKinds
{
    /// <summary>All kinds, in the order in which they are listed.</summary>
    public static IReadOnlyList<PartKind> All { get; } =
    [
        new("collector", "collectors.csv", Collector.Read),
        new("mount", "mounts.csv", CollectorMount.Read),
        new("drive", "drives.csv", Drive.Read),
        new("tank", "tanks.csv", Tank.Read),
        new("tank-jacket", "tank-jackets.csv", TankJacket.Read),
        new("pipe", "pipes.csv", Pipe.Read),
        new("pipe-insulation", "pipe-insulations.csv", PipeInsulation.Read),
        new("pump", "pumps.csv", Pump.Read),
        new("release", "releases.csv", HeatRelease.Read),
        new("night-cover", "night-covers.csv", NightCover.Read),
        new("lining", "linings.csv", Lining.Read),
        new("barrel", "barrels.csv", Barrel.Read),
        new("heater", "heaters.csv", Heater.Read),
        new("freeze-protection", "freeze-protections.csv", FreezeProtection.Read),
        new("sealing", "sealings.csv", Sealing.Read),
        new("perimeter-board", "perimeter-boards.csv", PerimeterBoard.Read),
        new("wind-break", "wind-breaks.csv", WindBreak.Read),
        new("bench", "benches.csv", Bench.Read),
        new("compost-mix", "compost-mixes.csv", CompostMix.Read),
        new("compost-coil", "compost-coils.csv", CompostCoil.Read),
        new("compost-wrap", "compost-wraps.csv", CompostWrap.Read),
        new("cable", "cables.csv", Cable.Read),
        new("supply", "supplies.csv", PowerSupply.Read),
        new("small-part", "small-parts.csv", SmallPart.Read),
    ];
}
