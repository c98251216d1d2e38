using DesignSearch.Layouts.Design.Sizing;
using DesignSearch.Parts.Compost;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;

namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>The dangers that go with the parts of a layout. Each defers to local codes and licensed work.</summary>
internal static class CautionWriter
{
    private const double DriestMix = 0.5;
    private const double WettestMix = 0.65;

    public static IReadOnlyList<Caution> Of(BuiltLayout built)
    {
        var cautions = new List<Caution>();
        void Add(string topic, string text) => cautions.Add(new(topic, text));
        if (built.Supply is { MainsW: > 0 })
            Add("Mains voltage", "Mains in a wet greenhouse kills. A licensed person plans, joins and tests it after the local code: a 30 mA residual-current device, splash-proof boxes, mechanical protection, mains and low voltage in separate boxes and ducts.");
        if (built.Supply is { LowVolts: > 0 })
            Add("Low voltage", "A safety supply, a fuse right behind it not above the cable's rating, cable glands facing down with a drip loop. Low voltage still starts fires: no loose joints.");
        if (built.Installation.Heater.PowerW > 0)
            Add("Fire", "An electric heater wants half a metre to a metre clear all round, never film, fleece or dust near it, a high-limit cut-out and a circuit of its own.");
        if (built.Solar is { } solar)
            Solar(solar, Add);
        if (built.Installation.Find<CompostNumbers>() is not null)
        {
            Add("Compost gas", "A rotting heap gives off carbon dioxide, ammonia and, where air is short, carbon monoxide and hydrogen sulphide. Keep it in the open, never inside or against a door or vent of the house; do not climb into a pit or bin.");
            Add("Compost fire and spores", "A large dry heap can set itself alight: keep it moist, watch the core, stay below 70 °C, and keep it clear of walls, straw stores and film. Wear a dust mask when turning it. Ask about boundary, odour and run-off rules.");
            Add("Heat from compost", $"No heap can be foretold within a factor of two, and many have failed in their first winter. Keep a heater in reserve. {Moisture(built)} It needs air in its pores, above some 5 % oxygen: coarse chips, never trodden down, air let in from below; a heap that smells of rot has too little.");
        }

        if (built.Installation.Find<BenchNumbers>() is { PowerW: > 0 })
            Add("Heated bench", "Heating cable and mats lie in the wet: only such as are made for it, whole, never crossed, cut or covered with anything but sand or pots; mains ones only behind a 30 mA residual-current device, after the local code and joined by a licensed person. Look at them every autumn.");
        if (built.Solar is not null || !built.Layout["barrel"].IsNone)
            Add("Weight and drowning", "Water weighs a tonne a cubic metre: firm level ground, straps against tipping. Children and animals drown in open water: a lid on every tank and barrel.");
        if (!built.Layout["night_cover"].IsNone || !built.Layout["lining"].IsNone || !built.Layout["sealing"].IsNone)
            Add("Damp and snow", "A tight, covered house is wet: vent at noon or mould takes the plants. A cold roof keeps its snow: brush it off before it is heavy. Film burns: no flame beneath it.");
        Add("Carbon monoxide", "No unvented flame in a closed greenhouse, ever, not even for one cold night.");
        Add("Power cut", "It comes with the storm. What is left then is the cover, the water and the ground; keep fleece for the plants that matter most.");
        return cautions;
    }

    // The bands are common practice, no source.
    private static string Moisture(BuiltLayout built) => built.Parts.Select(p => p.Part).OfType<CompostMix>().Select(m => m.Moisture).FirstOrDefault() switch
    {
        < DriestMix and var dry => FormattableString.Invariant($"This mix is too dry at {100 * dry:0} % of water: wet it to between 50 and 65 % while building, or it hardly rots."),
        > WettestMix and var wet => FormattableString.Invariant($"This mix is too wet at {100 * wet:0} % of water: mix in dry chips until it holds 50 to 65 %, or it rots without air and stays cold."),
        var good => FormattableString.Invariant($"Moisture should lie between 50 and 65 %, and this mix has {100 * good:0}: keep it there."),
    };

    private static void Solar(SolarLoop solar, Action<string, string> add)
    {
        add("Hot water and steam", FormattableString.Invariant($"Dry in the sun this collector reaches {solar.Collector.StagnationC:0} °C. Fill it only when it is cool or covered. Steam must always have an open way out. Above 60 °C metal burns the hand at a touch."));
        if (solar.Tank.IsClosed || solar.Protection.Method == FreezeMethod.Antifreeze)
            add("Pressure", "A closed loop or tank needs a relief valve, an expansion vessel and nothing to shut between collector and relief; never plug a valve that weeps. Closed stores are licensed work in many places.");
        add("Legionella", "Store water at 20 to 45 °C breeds legionella: keep it closed, label it as not for drinking or washing, never spray or mist with it, fill it through a backflow stop, drain it when it stands idle for weeks.");
        add("Wind", solar.Mount.Turning == TurningKind.Fixed
            ? "A collector is a sail, and the wind lifts as hard as it pushes. Footings or ground screws after the local wind zone; ask whether consent is needed."
            : "A turning collector is a sail on a hinge. End stops or a bolt take the storm, not the gear. Keep fingers and children out of the way of a frame that moves by itself; switch it off before working on it.");
        add("Working at height", "Lift collectors with two people and no wind; a ladder is not a scaffold.");
    }
}
