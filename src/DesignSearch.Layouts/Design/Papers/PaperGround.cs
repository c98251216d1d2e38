using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Papers;

/// <summary>What the papers of a layout are written from: its scenario and what is on its bill.</summary>
/// <param name="scenario">The scenario.</param>
/// <param name="built">The layout worked out.</param>
public sealed class PaperGround(Scenario scenario, BuiltLayout built)
{
    /// <summary>The scenario.</summary>
    public Scenario Scenario => scenario;

    /// <summary>Everything that the layout needs.</summary>
    public IReadOnlyList<NeededPart> Parts => built.Parts;

    /// <summary>What to try on the parts that are listed for a purpose; nothing where none is.</summary>
    /// <param name="purpose">The purpose.</param>
    /// <param name="how">How it is tried.</param>
    /// <param name="wanted">What is to be seen or measured.</param>
    /// <param name="unit">Unit of the value to write; empty where it is only seen.</param>
    /// <param name="isLicensed">True where a licensed person measures it.</param>
    public IEnumerable<CommissioningStep> Try(Purpose purpose, string how, string wanted, string unit = "", bool isLicensed = false)
    {
        var parts = Parts.Where(p => p.Purpose == purpose).ToList();
        if (parts.Count == 0)
            yield break;
        var names = parts.Select(p => p.Part.Name).Distinct().ToList();
        var count = parts.Where(p => p.Part.Info.Unit.IsWhole()).Sum(p => p.Quantity);
        yield return new(PaperWords.Thing(names, count, purpose.Where), how, wanted, unit)
        {
            PartIds = [.. parts.Select(p => p.Part.Id).Distinct()],
            IsLicensed = isLicensed,
        };
    }
}
