namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What turning a collector gains, as the fixed area that would do the same. Numbers are null where there is no answer; the sentence says why.</summary>
/// <param name="AreaM2">Area of the turning collector [m²].</param>
/// <param name="TurningYieldKwh">Its heat into the tank, weighted over the winters [kWh].</param>
/// <param name="FixedYieldKwh">The same of the same area fixed [kWh].</param>
/// <param name="ExtraFixedM2">Fixed area to be added for equal protection [m²].</param>
/// <param name="TurningPartsMore">What the turning parts cost more over the years, replacements included.</param>
/// <param name="PaysAbovePerM2">Price of a square metre of fixed collector, stand included, above which turning pays.</param>
/// <param name="CollectorPerM2">What it costs by this catalogue.</param>
/// <param name="Sentence">The answer in plain words.</param>
public sealed record TurningGain(
    double? AreaM2,
    double? TurningYieldKwh,
    double? FixedYieldKwh,
    double? ExtraFixedM2,
    decimal? TurningPartsMore,
    decimal? PaysAbovePerM2,
    decimal? CollectorPerM2,
    string Sentence);
