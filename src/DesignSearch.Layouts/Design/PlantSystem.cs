using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Layouts.Design;

/// <summary>One thing that a builder can add. All that the house knows of it is asked here and of what <see cref="Design"/> makes; nothing else names it.</summary>
public abstract class PlantSystem
{
    /// <summary>Kinds of parts that only it uses, in the order in which they are listed.</summary>
    public virtual IReadOnlyList<PartKind> Kinds => [];

    /// <summary>What can be chosen of it, in order.</summary>
    public virtual IReadOnlyList<Choice> Choices => [];

    /// <summary>Numbers of its model that an honest modeller could choose otherwise.</summary>
    public virtual IReadOnlyList<AssumptionEntry> Assumptions => [];

    /// <summary>Rules that its designs are checked by.</summary>
    public virtual IReadOnlyList<CheckRule> Rules => [];

    /// <summary>Reads what a scenario says of it beside the choices.</summary>
    /// <param name="greenhouse">The table [greenhouse]; a key that nobody asks for is a fault.</param>
    /// <param name="house">The house as read.</param>
    /// <returns>What was said; null where there is nothing to say.</returns>
    public virtual SystemWish? ReadWish(TomlTable greenhouse, Greenhouse house) => null;

    /// <summary>Narrows what may be chosen to what the scenario's wishes allow.</summary>
    /// <param name="varied">A choice of this system with its levels.</param>
    /// <param name="house">The house with the wishes.</param>
    /// <param name="choices">The table [choices], for faults.</param>
    public virtual VariedChoice Allowed(VariedChoice varied, Greenhouse house, TomlTable choices) => varied;

    /// <summary>Whether something of it needs extra-low voltage.</summary>
    /// <param name="choices">Choices made.</param>
    public virtual bool NeedsLowVoltage(IChoices choices) => false;

    /// <summary>Works out what is chosen of it.</summary>
    /// <param name="task">Scenario, layout and shelf.</param>
    /// <returns>The design; null where nothing is chosen.</returns>
    public abstract DesignedSystem? Design(DesignTask task);
}
