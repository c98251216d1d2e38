using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season.House;

namespace DesignSearch.Fitting.Plan;

/// <summary>A test of three nights for one house: how warm to hold it, by how strong a heater, on which nights, and what it takes.</summary>
public sealed record TestPlan
{
    // Nights as cold as one in five of the season's coldest month are waited for.
    private const double ColdShare = 0.2;
    private const int MonthNights = 30;
    private const double LeastSetC = 7.5, MostSetC = 12, WantedRiseK = 9, LeastRiseK = 6;
    private const double Spare = 1.1, OneHeaterW = 2000, HeaterStepW = 500, LeastHeaterW = 500;
    private const int EveningHour = 18;
    private const int NightHours = 14;

    /// <summary>Nights to hold it.</summary>
    public const int Nights = 3;

    /// <summary>Name of the run.</summary>
    public required string Name { get; init; }

    /// <summary>The house.</summary>
    public required Greenhouse House { get; init; }

    /// <summary>What the thermostat is set to [°C].</summary>
    public required double SetC { get; init; }

    /// <summary>Loss of the house by its drawing [W/K].</summary>
    public required double LossWPerK { get; init; }

    /// <summary>Air outside of a night that does well, mean [°C]; colder ones do better.</summary>
    public required double NightC { get; init; }

    /// <summary>Heat that such a night takes, mean [W].</summary>
    public required double MeanW { get; init; }

    /// <summary>Nights that stay above this outside will not do [°C].</summary>
    public double TooWarmC => SetC - LeastRiseK;

    /// <summary>The heater that is wanted [W]; more than one where it is over 2 kW.</summary>
    public required double HeaterW { get; init; }

    /// <summary>How many heaters that are.</summary>
    public int Heaters => (int)Math.Ceiling(HeaterW / OneHeaterW);

    /// <summary>Current of the three nights [kWh].</summary>
    public required double Kwh { get; init; }

    /// <summary>What it costs, in the currency of the scenario.</summary>
    public required double Cost { get; init; }

    /// <summary>Currency word.</summary>
    public required string Currency { get; init; }

    /// <summary>True where no mains are there.</summary>
    public required bool HasNoMains { get; init; }

    /// <summary>Plans the test of a scenario's house.</summary>
    /// <param name="scenario">The scenario.</param>
    public static TestPlan Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var winter = WinterSet.Make(scenario).Winters[0].Winter;
        var nights = Enumerable.Range(0, winter.SeasonHours / 24 - 1)
            .Select(d => winter.AirC.AsSpan(winter.WarmUpHours + 24 * d + EveningHour, NightHours).ToArray())
            .OrderBy(n => n.Average()).Take(MonthNights).ToList();
        var cold = nights[(int)(ColdShare * nights.Count)];
        var loss = HouseLoss.CoefficientWPerK(LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices)).Installation);
        var set = Math.Round(2 * Math.Clamp(cold.Average() + WantedRiseK, LeastSetC, MostSetC)) / 2;
        // One that runs in full all night tells as much as one that a thermostat stops: more than the wanted rise it need not give.
        var heater = Math.Max(LeastHeaterW, HeaterStepW * Math.Ceiling(Spare * loss * WantedRiseK / HeaterStepW));
        var night = Math.Max(cold.Average(), set - WantedRiseK);
        var mean = Math.Min(heater, loss * (set - night));
        return new()
        {
            Name = scenario.Name,
            House = scenario.Greenhouse,
            SetC = set,
            LossWPerK = loss,
            NightC = night,
            HeaterW = heater,
            MeanW = mean,
            Kwh = Nights * NightHours * mean / 1000,
            Cost = Nights * NightHours * mean / 1000 * (double)scenario.Money.TariffPerKwh,
            Currency = scenario.Money.Currency,
            HasNoMains = scenario.Site.HasNoMains,
        };
    }
}
