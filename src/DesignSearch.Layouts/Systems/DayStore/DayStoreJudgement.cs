namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>
/// What winters say about the digging of a day-heat store. Whether it pays is told by the comparison of layouts with and without it.
/// </summary>
/// <param name="ChargeKwh">Carried down [kWh].</param>
/// <param name="ReturnKwh">Brought back [kWh].</param>
/// <param name="FanKwh">Electricity of the fan [kWh].</param>
/// <param name="FloorM2">Floor of the house [m²].</param>
/// <param name="Days">Days of the seasons that were counted.</param>
/// <param name="AirWPerMK">From air to soil, per metre of pipe [W/(m·K)].</param>
/// <param name="SoilWPerMK">What the soil answers to the day's wave, per metre of pipe [W/(m·K)].</param>
public sealed record DayStoreJudgement(
    double ChargeKwh,
    double ReturnKwh,
    double FanKwh,
    double FloorM2,
    double Days,
    double AirWPerMK,
    double SoilWPerMK)
{
    /// <summary>Heat over current that a small heat pump gives; less is no reason to dig (common practice, no source).</summary>
    public const double LeastCop = 3;

    // A tenth of what a floor of its own accord keeps of a sunny day, 0.4 kWh/m² for 3 K (soil of 1.5 W/(m·K)).
    private const double LeastChargePerM2 = 0.05;

    // With less than a third of the soil's answer the air sets the pace, with more than all of it the soil does.
    private const double AirShare = 1.0 / 3;

    /// <summary>Heat brought back over electricity of the fan; 0 where it never ran.</summary>
    public double Cop => FanKwh > 0 ? ReturnKwh / FanKwh : 0;

    /// <summary>Carried down in a mean day [kWh].</summary>
    public double ChargeKwhPerDay => ChargeKwh / Days;

    /// <summary>Share of what comes back that is heat of the ground and not of the day, 0 to 1.</summary>
    public double GroundShare => ReturnKwh > 0 ? Math.Clamp(1 - ChargeKwh / ReturnKwh, 0, 1) : 0;

    /// <summary>All that is to be said, the weightiest first, then what limits it.</summary>
    public IReadOnlyList<DayStoreVerdict> Verdicts()
    {
        var found = new List<DayStoreVerdict>();
        if (Cop < LeastCop)
            found.Add(DayStoreVerdict.FanEatsIt);
        if (ChargeKwhPerDay < LeastChargePerM2 * FloorM2)
            found.Add(DayStoreVerdict.SunTooShort);
        if (found.Count == 0)
            found.Add(DayStoreVerdict.Worth);
        if (AirWPerMK > SoilWPerMK)
            found.Add(DayStoreVerdict.SoilLimits);
        else if (AirWPerMK < AirShare * SoilWPerMK)
            found.Add(DayStoreVerdict.AirLimits);
        return found;
    }
}
