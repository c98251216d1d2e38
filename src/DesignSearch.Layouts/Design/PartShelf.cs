using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Design;

/// <summary>
/// The parts of a catalogue that follow from others, sorted once at one level of prices: the first that serves is the one to take. Cheap is
/// what costs little by the unit: what is left of a roll or coil serves another line, which is not known while one line is listed.
/// Safe to use from several threads.
/// </summary>
public sealed class PartShelf
{
    private static readonly ConditionalWeakTable<Catalogue, ConcurrentDictionary<PriceLevel, PartShelf>> Made = [];

    private readonly Catalogue catalogue;
    private readonly PriceLevel level;
    private readonly Dictionary<SmallPartRole, SmallPart[]> small;
    private readonly ConcurrentDictionary<Type, object> sorted = new();
    private readonly ConcurrentDictionary<Type, object> remembered = new();

    private PartShelf(Catalogue catalogue, PriceLevel level)
    {
        (this.catalogue, this.level) = (catalogue, level);
        small = Of<SmallPart>().GroupBy(p => p.Role).ToDictionary(g => g.Key, g => g.ToArray());
    }

    /// <summary>The shelf of a catalogue; made at the first call.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="level">Which of the prices are paid.</param>
    public static PartShelf Of(Catalogue catalogue, PriceLevel level) => Made.GetOrCreateValue(catalogue).GetOrAdd(level, l => new(catalogue, l));

    /// <summary>All parts of one record, the cheapest first.</summary>
    /// <typeparam name="T">The record.</typeparam>
    public IReadOnlyList<T> Of<T>()
        where T : class, IPart => (T[])sorted.GetOrAdd(typeof(T), _ => catalogue.Of<T>().OrderBy(PriceOf).ThenBy(p => p.Id, StringComparer.Ordinal).ToArray());

    /// <summary>Small parts of a role, the cheapest first.</summary>
    public IReadOnlyList<SmallPart> Small(SmallPartRole role) => small.GetValueOrDefault(role, []);

    /// <summary>The cheapest small part of a role that serves; null where none does.</summary>
    /// <param name="role">The task.</param>
    /// <param name="volts">Voltage that must fit [V]; 0 for any.</param>
    /// <param name="amperes">Current that must be borne [A]; 0 for any.</param>
    public SmallPart? Cheapest(SmallPartRole role, double volts = 0, double amperes = 0)
    {
        foreach (var part in Small(role))
        {
            var fits = volts == 0 || part.Volts == 0 || part.Volts == volts;
            if (fits && (amperes == 0 || part.RatedA == 0 || part.RatedA >= amperes - 1e-9))
                return part;
        }

        return null;
    }

    /// <summary>The cheapest small part of a role that bears what it will meet; null where none does.</summary>
    /// <param name="role">The task.</param>
    /// <param name="duties">What it meets.</param>
    /// <param name="volts">Voltage that must fit [V]; 0 for any.</param>
    public SmallPart? Bearing(SmallPartRole role, ReadOnlySpan<Duty> duties, double volts = 0)
    {
        foreach (var part in Small(role))
        {
            if (volts != 0 && part.Volts != 0 && part.Volts != volts)
                continue;
            var bears = true;
            for (var i = 0; i < duties.Length && bears; i++)
                bears = duties[i].Margin(part) >= 0;
            if (bears)
                return part;
        }

        return null;
    }

    /// <summary>What a part costs at this level of prices.</summary>
    public decimal PriceOf(IPart part) => part.Info.PriceAt(level);

    /// <summary>Something made of this shelf alone, made once.</summary>
    /// <typeparam name="T">What is made; it stands for itself.</typeparam>
    /// <param name="make">Makes it.</param>
    public T Once<T>(Func<PartShelf, T> make)
        where T : class => (T)remembered.GetOrAdd(typeof(T), _ => make(this));
}
