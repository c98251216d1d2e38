using DesignSearch.Fitting.Plan;
using DesignSearch.Layouts.Words;

namespace DesignSearch.Fitting.Words;

/// <summary>The test of three nights in words.</summary>
public static class PlanWords
{
    /// <summary>Where each sensor hangs, by its number in the drawing.</summary>
    public static IReadOnlyList<string> Sensors { get; } =
    [
        "Logger inside: in the middle of the house, at the height of the plants' tops, in the free air, shaded by a white card, "
            + "no nearer than a metre to the heater's stream, touching nothing.",
        "Logger outside: two metres from the house on its shaded side, at breast height, under a small white roof that lets air through, "
            + "away from walls, drains and the heater's cable.",
        "Fan heater with its thermostat: low, in the middle of the floor, blowing along the house and not at a logger.",
        "Plug-in meter: between socket and heater, where it stays dry.",
    ];

    /// <summary>What to borrow.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<string> Borrow(TestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            Written.Sentence(
                $"{(plan.Heaters == 1 ? "A fan heater" : $"{plan.Heaters} fan heaters, each on a circuit of its own,")} of",
                $"{plan.HeaterW / 1000:0.0} kW",
                $"in all, with a thermostat that holds {plan.SetC:0.#} °C: the house loses about {plan.LossWPerK:0} W per degree,",
                $"and nine degrees of rise tell it. Stronger is not better."),
            $"A plug-in meter that counts kilowatt-hours{(plan.Heaters > 1 ? ", one for each heater" : "")}. "
                + "One that writes its power down is better.",
            "Two loggers of one make, set to write every ten minutes, their clocks set together to standard time.",
        ];
    }

    /// <summary>What to do, evening by evening.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<string> Nights(TestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            "First night, side by side: both loggers in one box in the open, touching. In the morning write down by how much they differ; "
                + "more than half a kelvin, and the one inside is corrected by it.",
            Written.Sentence(
                $"Then {TestPlan.Nights} nights, they need not follow one another: thermostat at {plan.SetC:0.#} °C from an hour",
                $"before sunset until an hour after sunrise. Expect some {plan.MeanW / 1000:0.0} kW on the mean."),
            "Leave the loggers running through the days between, heater off: the days tell of the sun, and more of them tell more.",
            Written.Sentence(
                $"It takes about {plan.Kwh:0} kWh of current, {plan.Cost:0.00} {plan.Currency}."),
        ];
    }

    /// <summary>Which nights will not do.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<string> NotThese(TestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            Written.Sentence(
                $"Nights that stay above {plan.TooWarmC:0} °C outside: the heater runs too little to tell anything.",
                $"Wait for {plan.NightC:0} °C or less on the mean of the night; the colder, the better."),
            "Nights of storm, or of snow that lies on the cover; a little wind is well.",
            Written.Sentence(
                $"Nights under {plan.SetC - (plan.HeaterW / plan.LossWPerK):0} °C, in which the heater no longer holds {plan.SetC:0.#} °C,",
                $"do as well: only log them whole."),
            "The night after a day with the door open: it must have been shut since noon.",
        ];
    }

    /// <summary>What must stay shut, and as it is.</summary>
    public static IReadOnlyList<string> Shut { get; } =
    [
        "Door and vents shut from noon until the heater is off, and nobody in and out; wax openers unhooked, or well above their warmth.",
        "Nothing that is not always there: no other heat, no night cover that you would not draw in winter, no watering in the evening.",
        "Barrels, pots and benches stay as they will stand in winter.",
    ];

    /// <summary>What to write, a line a day.</summary>
    public static IReadOnlyList<string> Line { get; } =
        ["day", "heater on at", "meter then [kWh]", "heater off at", "meter then [kWh]", "sky and wind at bedtime", "what was otherwise"];

    /// <summary>What can hurt.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<string> Cautions(TestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            "Mains in a damp place kill: only through a residual-current device of 30 mA, with a cable and plugs made for outdoors, "
                + "nothing lying in water, no cable reel wound up. If you are not sure of the socket, have it looked at by a "
                + "licensed person.",
            "A fan heater stands upright on firm, bare, dry ground, a metre from all that burns, fleece and film above all, with its "
                + "cut-out working; not under drips, and not one that is made for dry rooms only. "
                + "Look at plug and socket after the first hour: warm is a fault.",
            plan.HasNoMains
                ? "There are no mains here: a generator must stand in the open, far from door and dwelling, for its fumes kill; ask "
                    + "whether its sockets are protected. A gas or paraffin heater will not do, for nobody can meter it, and its "
                    + "fumes gather."
                : "One socket bears one heater of 2 kW through a whole night, often no more: two heaters go on two circuits.",
            "Local codes come first.",
        ];
    }

    /// <summary>What comes then.</summary>
    public static string Then =>
        "Then put the tables beside each other, columns time, inside_c, outside_c and heater_kwh or heater_w, and run: "
            + "designsearch fit RUN LOG.csv";
}
