using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>The supply of one layout.</summary>
/// <param name="plan">How current comes to the greenhouse, and to each device in it.</param>
internal sealed class SuppliedPlant(SupplyPlan plan) : SuppliedSystem(plan)
{
    public override IEnumerable<Caution> Cautions
    {
        get
        {
            if (Plan.MainsW > 0)
                yield return SupplyWords.Mains;
            if (Plan.Lines.Count > 0)
                yield return SupplyWords.LowVoltage;
        }
    }

    public override IEnumerable<Upkeep> Upkeep
    {
        get
        {
            yield return SupplyWords.TestButton;
            if (Plan.MainsW > 0)
                yield return SupplyWords.MainsLook;
            if (Plan.Lines.Count > 0)
                yield return SupplyWords.LowLook;
        }
    }

    public override IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => SupplyPaperWords.Steps(Plan, ground);

    public override IEnumerable<EnquiryFact> Enquiry(PaperGround ground) => SupplyPaperWords.Enquiry(Plan, ground);

    public override void Draw(SchemeSketch sketch) => SupplyScheme.Draw(Plan, sketch);

    public override IEnumerable<Check> ListChecks(Conditions conditions, BuiltLayout built) =>
        SupplyChecks.Of(Plan, built.Parts, conditions.Scenario.Site);
}
