using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Hours that a licensed electrician is paid for. Own estimates, no source: an offer decides.</summary>
internal static class LicensedWork
{
    // Joining a new line at the dwelling's board; box with residual-current device and breaker; each device on the mains;
    // test and certificate.
    private const double NewLineH = 3;
    private const double BoxH = 2;
    private const double DeviceH = 1;
    private const double TestH = 1.5;

    /// <summary>Hours for what is on the mains in the greenhouse; none where only low voltage comes from a socket.</summary>
    /// <param name="plan">How current comes there.</param>
    /// <param name="hasMains">Whether mains are there already.</param>
    public static double Hours(SupplyPlan plan, bool hasMains)
    {
        if (plan.MainsCircuits.Count == 0)
            return 0;
        var hours = (hasMains ? 0 : NewLineH) + BoxH + TestH;
        for (var i = 0; i < plan.MainsCircuits.Count; i++)
            hours += plan.MainsCircuits[i].IsJoinedInPrice || plan.MainsCircuits[i].IsControl ? 0 : DeviceH;
        return hours;
    }

    /// <summary>What they are for.</summary>
    /// <param name="plan">How current comes there.</param>
    public static Purpose PurposeOf(SupplyPlan plan)
    {
        for (var i = 0; i < plan.MainsCircuits.Count; i++)
        {
            if (plan.MainsCircuits[i].IsJoinedInPrice)
                return SupplyPurposes.LicensedBesideUnit;
        }

        return SupplyPurposes.Licensed;
    }
}
