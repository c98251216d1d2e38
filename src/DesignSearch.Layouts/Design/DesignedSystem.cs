using DesignSearch.Climate.Plane;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Design;

/// <summary>One system of one layout, worked out: its numbers, what it needs and all that is to be said of it.</summary>
public abstract class DesignedSystem
{
    /// <summary>True when it is certain, before anything is listed, that the catalogue lacks a part.</summary>
    public virtual bool LacksParts => false;

    /// <summary>Floor in the house that its stores take [m²].</summary>
    public virtual double StoreFloorM2 => 0;

    /// <summary>Weight on the floor under its heaviest store; null without one.</summary>
    public virtual FloorLoad? FloorLoad => null;

    /// <summary>Where its collector looks and how it turns; null without one.</summary>
    public virtual Mount? Mount => null;

    /// <summary>Where the plants that are held stand; null where it is the whole house.</summary>
    public virtual PlantPlace? Plants => null;

    /// <summary>Air of the house up to which it heats by a thermostat [°C]; below every temperature where it has none.</summary>
    public virtual double HeatsToC => double.NegativeInfinity;

    /// <summary>True where it heats by current whatever sun and heap do, so that it can be counted on.</summary>
    public virtual bool IsReserve => false;

    /// <summary>What it is, in the title of the layout.</summary>
    public virtual IEnumerable<string> Words => [];

    /// <summary>Puts its numbers into the plant that is simulated.</summary>
    /// <param name="plant">The plant so far.</param>
    public virtual Installation Install(Installation plant) => plant;

    /// <summary>Lists what it needs.</summary>
    /// <param name="needs">The list.</param>
    public virtual void List(Needs needs)
    {
    }

    /// <summary>What of it draws current.</summary>
    public virtual IEnumerable<Circuit> Circuits => [];

    /// <summary>Draws its components and what joins them. The supply draws last and brings current to every device by its name.</summary>
    /// <param name="sketch">The scheme so far.</param>
    public virtual void Draw(SchemeSketch sketch)
    {
    }

    /// <summary>What of it has a size, each by the name of its component.</summary>
    /// <param name="scenario">The scenario.</param>
    public virtual IEnumerable<Body> Bodies(Scenario scenario) => [];

    /// <summary>The frame of its collectors; null without one.</summary>
    /// <param name="parts">Everything that was listed.</param>
    public virtual StandPlan? Frame(IReadOnlyList<NeededPart> parts) => null;

    /// <summary>Electricity of a season that the season model does not count [kWh].</summary>
    /// <param name="plane">What the mount did in the winter; null without one.</param>
    public virtual double ExtraKwh(PlaneIrradiance? plane) => 0;

    /// <summary>The checks that need neither list nor supply; those that need a season are left out without outcomes.</summary>
    /// <param name="conditions">What they are asked under.</param>
    public virtual IEnumerable<Check> Checks(Conditions conditions) => [];

    /// <summary>The checks that need what was listed.</summary>
    /// <param name="conditions">What they are asked under.</param>
    /// <param name="built">The whole layout.</param>
    public virtual IEnumerable<Check> ListChecks(Conditions conditions, BuiltLayout built) => [];

    /// <summary>What to dial in, on which line of the bill; a line that is not bought has no setting.</summary>
    /// <param name="scenario">The scenario.</param>
    public virtual IEnumerable<Dial> Dials(Scenario scenario) => [];

    /// <summary>What is dangerous about it.</summary>
    public virtual IEnumerable<Caution> Cautions => [];

    /// <summary>What is in doubt about it.</summary>
    public virtual IEnumerable<PlantDoubt> Doubts => [];

    /// <summary>What it asks for year by year.</summary>
    public virtual IEnumerable<Upkeep> Upkeep => [];

    /// <summary>What to try on it before it is left to itself.</summary>
    /// <param name="ground">Scenario and bill.</param>
    public virtual IEnumerable<CommissioningStep> Commissioning(PaperGround ground) => [];

    /// <summary>What a licensed person must know of it; nothing where its work is the builder's own.</summary>
    /// <param name="ground">Scenario and bill.</param>
    public virtual IEnumerable<EnquiryFact> Enquiry(PaperGround ground) => [];

    /// <summary>What to write down of it while it runs.</summary>
    public virtual IEnumerable<LogColumn> Log => [];
}
