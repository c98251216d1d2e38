using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Winters;

/// <summary>Makes winters: cut from a record, made from monthly means, or hardened.</summary>
public static class WinterMaker
{
    private const ulong SeedStep = 0xD1342543DE82EF95;

    /// <summary>Every winter a record holds: one of a typical year, one for each whole winter of a real record, or one joined from the ends of a calendar year.</summary>
    /// <param name="record">From <see cref="WeatherFile.Read"/>.</param>
    /// <param name="season">Dates that count.</param>
    /// <param name="options">Ground and snow.</param>
    /// <returns>Empty when the record holds neither a whole winter nor a whole year.</returns>
    public static IReadOnlyList<Winter> FromRecord(WeatherRecord record, SeasonDates season, WinterOptions options) => RecordWinters.Cut(record, season, options);

    /// <summary>A winter made from twelve monthly means. The same climate, season and seed give the same winter.</summary>
    /// <param name="climate">Place and means.</param>
    /// <param name="season">Dates that count.</param>
    /// <param name="kind">Typical, or Hard: the typical one of the same seed with the stress week laid over it.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="options">Ground, snow, and how hard the hard one is.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another kind.</exception>
    public static Winter Synthetic(MonthlyClimate climate, SeasonDates season, WinterKind kind, ulong seed, WinterOptions options)
    {
        if (kind is not (WinterKind.Typical or WinterKind.Hard))
            throw new ArgumentOutOfRangeException(nameof(kind), kind, "A synthetic winter is typical or hard.");
        var typical = SyntheticWinter.Make(climate, season, seed, options);
        return kind == WinterKind.Typical ? typical : HardWinter.Over(typical, HardLevels.Of(climate, typical, options), options);
    }

    /// <summary>Lays the stress week of the return period over a typical or recorded winter: dark, then cold and clear.</summary>
    /// <param name="winters">Winters of one place and season, at least one; the week is laid over the one whose lowest hour is in
    /// the middle. Fifteen or more tell by themselves how low a year goes.</param>
    /// <param name="options">Return period, or the builder's own lowest temperature; power cut.</param>
    public static Winter Harden(IReadOnlyList<Winter> winters, WinterOptions options)
    {
        var usual = winters.OrderBy(w => w.AirC.Skip(w.WarmUpHours).Min()).ElementAt(winters.Count / 2);
        return HardWinter.Over(usual, HardLevels.Of(winters, usual, options), options);
    }

    /// <summary>New winters drawn from recorded or typical ones: whole cold and mild spells change places, and each winter's lowest hour is drawn anew.</summary>
    /// <param name="sources">Winters of one place and season, at least one.</param>
    /// <param name="count">How many to draw.</param>
    /// <param name="seed">Any number; the n-th winter of a seed is always the same.</param>
    /// <param name="options">Ground, snow, yearly spread of the lowest temperature.</param>
    public static IReadOnlyList<Winter> Drawn(IReadOnlyList<Winter> sources, int count, ulong seed, WinterOptions options) =>
        [.. Enumerable.Range(1, count).Select(n => SpellDraw.Draw(sources, n, seed, options))];

    /// <summary>New winters made from monthly means, each with a lowest hour drawn anew.</summary>
    /// <param name="climate">Place and means.</param>
    /// <param name="season">Dates that count.</param>
    /// <param name="count">How many to draw.</param>
    /// <param name="seed">Any number; the n-th winter of a seed is always the same, and none is the typical one of that seed.</param>
    /// <param name="options">Ground, snow, yearly spread of the lowest temperature.</param>
    public static IReadOnlyList<Winter> Drawn(MonthlyClimate climate, SeasonDates season, int count, ulong seed, WinterOptions options)
    {
        var usual = UsualDays.Of(climate, options);
        return
        [
            .. Enumerable.Range(1, count).Select(n =>
            {
                var drawn = SyntheticWinter.Make(climate, season, seed + (ulong)n * SeedStep, options, usual, FormattableString.Invariant($"drawn {n}"));
                return LowestDraw.Over(drawn, o => HardLevels.Level(climate, o), o => HardLevels.Of(climate, drawn, o), n, seed, options);
            }),
        ];
    }
}
