using System.Diagnostics.CodeAnalysis;
using DesignSearch.Files;

namespace DesignSearch.Parts;

/// <summary>Every part that may be chosen, from the CSV files of one or several folders; a folder may leave out kinds that it does not offer.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<string, IPart> byId;

    private Catalogue(IReadOnlyList<IPart> all)
    {
        All = all;
        byId = all.ToDictionary(p => p.Id, StringComparer.Ordinal);
        Kinds = [.. PartKinds.All.Select(k => k.Name).Where(k => all.Any(p => p.Kind == k))];
    }

    /// <summary>Every part, kind by kind, in the order of the files.</summary>
    public IReadOnlyList<IPart> All { get; }

    /// <summary>The kinds of which there is at least one part.</summary>
    public IReadOnlyList<string> Kinds { get; }

    /// <summary>The parts of kind collector, in the order of the files.</summary>
    public IReadOnlyList<Collector> Collectors => Of<Collector>();

    /// <summary>The parts of kind mount, in the order of the files.</summary>
    public IReadOnlyList<CollectorMount> Mounts => Of<CollectorMount>();

    /// <summary>The parts of kind drive, in the order of the files.</summary>
    public IReadOnlyList<Drive> Drives => Of<Drive>();

    /// <summary>The parts of kind tank, in the order of the files.</summary>
    public IReadOnlyList<Tank> Tanks => Of<Tank>();

    /// <summary>The parts of kind tank-jacket, in the order of the files.</summary>
    public IReadOnlyList<TankJacket> TankJackets => Of<TankJacket>();

    /// <summary>The parts of kind pipe, in the order of the files.</summary>
    public IReadOnlyList<Pipe> Pipes => Of<Pipe>();

    /// <summary>The parts of kind pipe-insulation, in the order of the files.</summary>
    public IReadOnlyList<PipeInsulation> PipeInsulations => Of<PipeInsulation>();

    /// <summary>The parts of kind pump, in the order of the files.</summary>
    public IReadOnlyList<Pump> Pumps => Of<Pump>();

    /// <summary>The parts of kind release, in the order of the files.</summary>
    public IReadOnlyList<HeatRelease> Releases => Of<HeatRelease>();

    /// <summary>The parts of kind night-cover, in the order of the files.</summary>
    public IReadOnlyList<NightCover> NightCovers => Of<NightCover>();

    /// <summary>The parts of kind lining, in the order of the files.</summary>
    public IReadOnlyList<Lining> Linings => Of<Lining>();

    /// <summary>The parts of kind barrel, in the order of the files.</summary>
    public IReadOnlyList<Barrel> Barrels => Of<Barrel>();

    /// <summary>The parts of kind heater, in the order of the files.</summary>
    public IReadOnlyList<Heater> Heaters => Of<Heater>();

    /// <summary>The parts of kind freeze-protection, in the order of the files.</summary>
    public IReadOnlyList<FreezeProtection> FreezeProtections => Of<FreezeProtection>();

    /// <summary>The parts of kind sealing, in the order of the files.</summary>
    public IReadOnlyList<Sealing> Sealings => Of<Sealing>();

    /// <summary>The parts of kind perimeter-board, in the order of the files.</summary>
    public IReadOnlyList<PerimeterBoard> PerimeterBoards => Of<PerimeterBoard>();

    /// <summary>The parts of kind bench, in the order of the files.</summary>
    public IReadOnlyList<Bench> Benches => Of<Bench>();

    /// <summary>The parts of kind compost-mix, in the order of the files.</summary>
    public IReadOnlyList<CompostMix> CompostMixes => Of<CompostMix>();

    /// <summary>The parts of kind compost-coil, in the order of the files.</summary>
    public IReadOnlyList<CompostCoil> CompostCoils => Of<CompostCoil>();

    /// <summary>The parts of kind compost-wrap, in the order of the files.</summary>
    public IReadOnlyList<CompostWrap> CompostWraps => Of<CompostWrap>();

    /// <summary>The parts of kind cable, in the order of the files.</summary>
    public IReadOnlyList<Cable> Cables => Of<Cable>();

    /// <summary>The parts of kind supply, in the order of the files.</summary>
    public IReadOnlyList<PowerSupply> Supplies => Of<PowerSupply>();

    /// <summary>The parts of kind small-part, in the order of the files.</summary>
    public IReadOnlyList<SmallPart> SmallParts => Of<SmallPart>();

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
