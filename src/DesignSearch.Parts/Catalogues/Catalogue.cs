using System.Diagnostics.CodeAnalysis;
using DesignSearch.Files;
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

/// <summary>Every part that may be chosen, from the CSV files of one or several folders; a folder may leave out kinds that it does not offer.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<string, IPart> byId;

    private Catalogue(IReadOnlyList<IPart> all)
    {
        All = all;
        byId = all.ToDictionary(p => p.Id, StringComparer.Ordinal);
        Kinds = [.. PartKinds.All.Select(k => k.Name).Where(k => all.Any(p => p.Kind == k))];
        Collectors = Of<Collector>();
        Mounts = Of<CollectorMount>();
        Drives = Of<Drive>();
        Tanks = Of<Tank>();
        TankJackets = Of<TankJacket>();
        Pipes = Of<Pipe>();
        PipeInsulations = Of<PipeInsulation>();
        Pumps = Of<Pump>();
        Releases = Of<HeatRelease>();
        NightCovers = Of<NightCover>();
        Linings = Of<Lining>();
        Barrels = Of<Barrel>();
        Heaters = Of<Heater>();
        FreezeProtections = Of<FreezeProtection>();
        Sealings = Of<Sealing>();
        PerimeterBoards = Of<PerimeterBoard>();
        WindBreaks = Of<WindBreak>();
        Benches = Of<Bench>();
        CompostMixes = Of<CompostMix>();
        CompostCoils = Of<CompostCoil>();
        CompostWraps = Of<CompostWrap>();
        Cables = Of<Cable>();
        Supplies = Of<PowerSupply>();
        SmallParts = Of<SmallPart>();
    }

    /// <summary>Every part, kind by kind, in the order of the files.</summary>
    public IReadOnlyList<IPart> All { get; }

    /// <summary>The kinds of which there is at least one part.</summary>
    public IReadOnlyList<string> Kinds { get; }

    /// <summary>The parts of kind collector, in the order of the files.</summary>
    public IReadOnlyList<Collector> Collectors { get; }

    /// <summary>The parts of kind mount, in the order of the files.</summary>
    public IReadOnlyList<CollectorMount> Mounts { get; }

    /// <summary>The parts of kind drive, in the order of the files.</summary>
    public IReadOnlyList<Drive> Drives { get; }

    /// <summary>The parts of kind tank, in the order of the files.</summary>
    public IReadOnlyList<Tank> Tanks { get; }

    /// <summary>The parts of kind tank-jacket, in the order of the files.</summary>
    public IReadOnlyList<TankJacket> TankJackets { get; }

    /// <summary>The parts of kind pipe, in the order of the files.</summary>
    public IReadOnlyList<Pipe> Pipes { get; }

    /// <summary>The parts of kind pipe-insulation, in the order of the files.</summary>
    public IReadOnlyList<PipeInsulation> PipeInsulations { get; }

    /// <summary>The parts of kind pump, in the order of the files.</summary>
    public IReadOnlyList<Pump> Pumps { get; }

    /// <summary>The parts of kind release, in the order of the files.</summary>
    public IReadOnlyList<HeatRelease> Releases { get; }

    /// <summary>The parts of kind night-cover, in the order of the files.</summary>
    public IReadOnlyList<NightCover> NightCovers { get; }

    /// <summary>The parts of kind lining, in the order of the files.</summary>
    public IReadOnlyList<Lining> Linings { get; }

    /// <summary>The parts of kind barrel, in the order of the files.</summary>
    public IReadOnlyList<Barrel> Barrels { get; }

    /// <summary>The parts of kind heater, in the order of the files.</summary>
    public IReadOnlyList<Heater> Heaters { get; }

    /// <summary>The parts of kind freeze-protection, in the order of the files.</summary>
    public IReadOnlyList<FreezeProtection> FreezeProtections { get; }

    /// <summary>The parts of kind sealing, in the order of the files.</summary>
    public IReadOnlyList<Sealing> Sealings { get; }

    /// <summary>The parts of kind perimeter-board, in the order of the files.</summary>
    public IReadOnlyList<PerimeterBoard> PerimeterBoards { get; }

    /// <summary>The parts of kind wind-break, in the order of the files.</summary>
    public IReadOnlyList<WindBreak> WindBreaks { get; }

    /// <summary>The parts of kind bench, in the order of the files.</summary>
    public IReadOnlyList<Bench> Benches { get; }

    /// <summary>The parts of kind compost-mix, in the order of the files.</summary>
    public IReadOnlyList<CompostMix> CompostMixes { get; }

    /// <summary>The parts of kind compost-coil, in the order of the files.</summary>
    public IReadOnlyList<CompostCoil> CompostCoils { get; }

    /// <summary>The parts of kind compost-wrap, in the order of the files.</summary>
    public IReadOnlyList<CompostWrap> CompostWraps { get; }

    /// <summary>The parts of kind cable, in the order of the files.</summary>
    public IReadOnlyList<Cable> Cables { get; }

    /// <summary>The parts of kind supply, in the order of the files.</summary>
    public IReadOnlyList<PowerSupply> Supplies { get; }

    /// <summary>The parts of kind small-part, in the order of the files.</summary>
    public IReadOnlyList<SmallPart> SmallParts { get; }

    /// <summary>Reads one folder.</summary>
    /// <param name="folder">A folder with CSV files named as <see cref="PartKinds"/> says.</param>
    /// <param name="faults">Receives everything that is wrong; the result is only to be used when nothing is.</param>
    public static Catalogue Load(string folder, FaultList faults) => Load([folder], faults);

    /// <summary>Reads several folders as one catalogue; an id may stand in one of them only.</summary>
    /// <param name="folders">Folders with CSV files named as <see cref="PartKinds"/> says.</param>
    /// <param name="faults">Receives everything that is wrong; the result is only to be used when nothing is.</param>
    public static Catalogue Load(IEnumerable<string> folders, FaultList faults) => new(CatalogueReading.Read(folders, faults));

    /// <summary>A catalogue of parts made in memory.</summary>
    /// <param name="parts">Parts with different ids.</param>
    /// <exception cref="ArgumentException">Two parts have the same id.</exception>
    public static Catalogue Of(IEnumerable<IPart> parts) => new([.. parts]);

    /// <summary>Finds a part by its id.</summary>
    /// <typeparam name="T">The record of its kind, or <see cref="IPart"/>.</typeparam>
    /// <param name="id">The id.</param>
    /// <param name="part">The part, or null.</param>
    /// <returns>True when there is a part of this id and kind.</returns>
    public bool TryFind<T>(string id, [NotNullWhen(true)] out T? part)
        where T : class, IPart
    {
        part = byId.GetValueOrDefault(id) as T;
        return part is not null;
    }

    private T[] Of<T>()
        where T : IPart => [.. All.OfType<T>()];
}
