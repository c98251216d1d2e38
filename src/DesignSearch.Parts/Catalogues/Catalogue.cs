using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using DesignSearch.Files;

namespace DesignSearch.Parts.Catalogues;

/// <summary>Every part that may be chosen, from the CSV files of one or several folders; a folder may leave out kinds that it does not offer.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<string, IPart> byId;
    private readonly ConcurrentDictionary<Type, object> byRecord = new();
    private readonly Lazy<Catalogue> offMains;
    private readonly SpoiltRows spoilt;

    private Catalogue(IReadOnlyList<IPart> all, SpoiltRows? spoilt = null)
    {
        All = all;
        this.spoilt = spoilt ?? new();
        byId = all.ToDictionary(p => p.Id, StringComparer.Ordinal);
        Kinds = [.. all.Select(p => p.Kind).Distinct()];
        offMains = new(() => new([.. All.Where(p => !p.RunsOnMains)]));
    }

    /// <summary>Every part, kind by kind, in the order of the files.</summary>
    public IReadOnlyList<IPart> All { get; }

    /// <summary>The kinds of which there is at least one part.</summary>
    public IReadOnlyList<PartKind> Kinds { get; }

    /// <summary>The same without what needs mains; made once.</summary>
    public Catalogue OffMains => offMains.Value;

    /// <summary>Reads several folders as one catalogue; an id may stand in one of them only.</summary>
    /// <param name="folders">Folders with CSV files named as the kinds say.</param>
    /// <param name="kinds">The kinds of parts there are, in the order in which they are listed.</param>
    /// <param name="faults">Receives everything that is wrong; the result is only to be used when nothing is.</param>
    public static Catalogue Load(IEnumerable<string> folders, IReadOnlyList<PartKind> kinds, FaultList faults)
    {
        var spoilt = new SpoiltRows();
        return new(CatalogueReading.Read(folders, kinds, spoilt, faults), spoilt);
    }

    /// <summary>Stands for a catalogue that could not be found: it holds nothing and may hold anything.</summary>
    public static Catalogue Unread { get; } = new([], new SpoiltRows { All = true });

    /// <summary>A catalogue of parts made in memory.</summary>
    /// <param name="parts">Parts with different ids.</param>
    /// <exception cref="ArgumentException">Two parts have the same id.</exception>
    public static Catalogue Of(IEnumerable<IPart> parts) => new([.. parts]);

    /// <summary>The parts of one record, in the order of the files.</summary>
    /// <typeparam name="T">The record of the kind.</typeparam>
    public IReadOnlyList<T> Of<T>()
        where T : class, IPart => (IReadOnlyList<T>)byRecord.GetOrAdd(typeof(T), _ => All.OfType<T>().ToArray());

    /// <summary>True where a part that is not here may stand in a row that could not be read: that row's fault was told, and what follows from it need not be.</summary>
    /// <param name="id">Id of the part.</param>
    /// <param name="kind">Its kind; null where it may be of any.</param>
    public bool MayLack(string id, PartKind? kind = null) =>
        spoilt.All || spoilt.Rows.ContainsKey(id) || (kind is null ? spoilt.Kinds.Count > 0 : spoilt.Kinds.Contains(kind));

    /// <summary>True where parts of a kind may stand in rows that could not be read.</summary>
    /// <param name="kind">The kind.</param>
    public bool MayLack(PartKind kind) => spoilt.All || spoilt.Kinds.Contains(kind) || spoilt.Rows.ContainsValue(kind);

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
}
