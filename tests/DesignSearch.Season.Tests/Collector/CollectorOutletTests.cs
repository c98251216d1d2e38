using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Rows C1 of the check values beyond the powers of the certificate.</summary>
public sealed class CollectorOutletTests
{
    private const string Sheet = "Solar Keymark data sheet DS 3663, CENER report 30.4062.0, 2022";

    private static readonly CollectorNumbers Collector = new() { AreaM2 = 1, Eta0Beam = 0.739, A1WPerM2K = 3.51, A2WPerM2K2 = 0.017, DiffuseModifier = 0.91, CapacityJPerM2K = 10620 };

    [Fact]
    public void Hemispherical_efficiency_and_capacity()
    {
        Validation.Equal("collector C1 efficiency under a blue sky", "1", 0.72902, CollectorEfficiency.AbsorbedWPerM2(Collector, 850, 150, 1) / 1000, 1e-5, Sheet);
        var warming = CollectorEfficiency.PowerWPerM2(Collector, 0, 0, 1, 0) - CollectorEfficiency.PowerWPerM2(Collector, 0, 0, 1, 0, 0, 20.0 / 3600);
        Validation.Equal("collector C1 heat to warm by 20 K", "kWh/m²", 0.0590, warming / 1000, 0.0001, Sheet);
    }

    [Fact]
    public void Outlet_temperature_of_two_square_metres()
    {
        // A 2.0 m², G 700 W/m² hemispherical, Ta 5, Tin 30, 0.02 kg/s of water at 4180 J/(kg·K), mean of inlet and outlet.
        var rise = 0.0;
        for (var i = 0; i < 60; i++)
            rise = 2.0 * CollectorEfficiency.PowerWPerM2(Collector, 700 * 0.85, 700 * 0.15, 1, 30 + rise / 2 - 5) / (0.02 * 4180);
        Validation.Equal("collector C1 outlet above inlet", "K", 9.358, rise, 9.358 * 0.002, Sheet + ", recomputed");
        Validation.Equal("collector C1 heat of two square metres", "W", 782.3, rise * 0.02 * 4180, 782.3 * 0.002, Sheet + ", recomputed");
    }
}
