using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Parts.OffGrid;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>The supply of one layout.</summary>
/// <param name="plan">How current comes to the greenhouse, and to each device in it.</param>
/// <param name="isOffGrid">True where there are no mains.</param>
internal sealed class SuppliedPlant(SupplyPlan plan, bool isOffGrid = false) : SuppliedSystem(plan)
{
    public override IEnumerable<Caution> Cautions
    {
        get
        {
            if (Plan.MainsW > 0)
                yield return SupplyWords.Mains;
            if (Plan.Lines.Count > 0)
                yield return SupplyWords.LowVoltage;
            if (Plan.Battery is not { } battery)
                yield break;
            yield return OffGridWords.BatteryShort;
            yield return battery.Battery.Chemistry == BatteryChemistry.Lithium ? OffGridWords.Lithium : OffGridWords.Lead;
            yield return OffGridWords.PanelIsLive;
            yield return OffGridWords.Empty;
        }
    }

    public override IEnumerable<Upkeep> Upkeep
    {
        get
        {
            if (!isOffGrid)
                yield return SupplyWords.TestButton;
            if (Plan.MainsW > 0)
                yield return SupplyWords.MainsLook;
            if (Plan.Lines.Count > 0)
                yield return SupplyWords.LowLook;
            foreach (var work in Plan.Battery is { } battery ? OffGridWords.Upkeep(battery) : [])
                yield return work;
        }
    }

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => SupplyPaperWords.Steps(Plan, ground);

    public override IEnumerable<LogColumn> Log => Plan.Battery is null ? [] : [OffGridPaperWords.AtSunrise];

    public override IEnumerable<EnquiryFact> Enquiry(PaperGround ground) => SupplyPaperWords.Enquiry(Plan, ground);

    public override IEnumerable<Dial> Dials(Scenario scenario) => Plan.Battery is { } battery ? OffGridWords.Dials(battery) : [];

    public override void Draw(SchemeSketch sketch) => SupplyScheme.Draw(Plan, sketch);

    public override IEnumerable<Check> ListChecks(Conditions conditions, BuiltLayout built) =>
        SupplyChecks.Of(Plan, built.Parts, conditions.Scenario.Site);
}
