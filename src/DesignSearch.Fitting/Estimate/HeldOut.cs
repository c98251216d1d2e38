using DesignSearch.Fitting.Model;
using DesignSearch.Fitting.Nights;

namespace DesignSearch.Fitting.Estimate;

/// <summary>Each night as a fit has it that did not see it.</summary>
internal static class HeldOut
{
    /// <summary>Every third night is taken out by turns.</summary>
    /// <param name="model">The house with its log.</param>
    /// <param name="used">The nights that are fitted.</param>
    /// <returns>Air in their hours, NaN elsewhere [°C], and measured against it, root of the mean square [K]; NaN with fewer nights than turns.</returns>
    public static (double[] Air, double RmsK) Of(FitModel model, List<Night> used)
    {
        const int turns = 3;
        var air = HouseFitting.NaN(model.Log.Hours);
        if (used.Count < turns)
            return (air, double.NaN);
        var (sum, count) = (0.0, 0);
        for (var turn = 0; turn < turns; turn++)
        {
            var unseen = used.Where((_, i) => i % turns == turn).ToList();
            var point = GroupFit.Loss(model, [.. used.Except(unseen)]).Run().Point;
            var predicted = model.Air([point], model.FreeIn(used))[0];
            foreach (var hour in unseen.SelectMany(n => n.Hours))
            {
                air[hour] = predicted[hour];
                var miss = predicted[hour] - model.Log.InsideC[hour];
                (sum, count) = double.IsNaN(miss) ? (sum, count) : (sum + miss * miss, count + 1);
            }
        }

        return (air, Math.Sqrt(sum / count));
    }
}
