using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Benches;

/// <summary>A bench in a layout file of a scenario whose whole house must be held: it is refused.</summary>
internal sealed class BenchNotEnough : DesignedSystem
{
    public override IEnumerable<Check> Checks(Conditions conditions) => [BenchSystem.Enough.Found(false, -1, BenchWords.NotEnough)];
}
