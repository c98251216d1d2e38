using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Wirings that would burn, stick or leave the line alive: each is refused, or cannot come about. Parts are weakened from the starter catalogue.</summary>
public sealed class DangerousWiringTests
{
    private static readonly (string, object)[] Turning = [("mount", "two-position-rocker"), ("drive", "slew-200nm"), ("limit_deg", 30), ("switch_hours", 5.5), ("shaft_seal", "cheapest")];
    private static readonly (string, object)[] Cover = [("night_cover", "aluminised-motor"), ("control_box", "cheapest")];
    private static readonly (string, object)[] Heater = [("heater", "fan-heater-2kw"), ("heater_set_c", 4)];
    private static readonly (string, string) Near = ("mains_cable_m = 85", "mains_cable_m = 20");

    [Fact]
    public void Contacts_of_a_tenth_of_an_ampere_are_refused_by_name()
    {
        var refused = Refused(Of(true, Turning), Weak(0.1, "LimitSwitch", "ReversingInterlock", "DifferenceController", "Relay"));
        Assert.Contains(refused, c => c.Sentence.Contains("nterlock", StringComparison.Ordinal) || c.Sentence.Contains("controller", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("SolarController")]
    [InlineData("Thermostat")]
    public void A_control_too_weak_for_its_pump_is_refused_where_no_relay_helps(string role)
    {
        var refused = Refused(Of(true), Weak(0.1, role, "Relay"));
        var name = role == "Thermostat" ? "thermostat" : "controller";
        Assert.Contains(refused, c => c.Sentence.Contains(name, StringComparison.OrdinalIgnoreCase) && c.Sentence.Contains("0.1 A", StringComparison.Ordinal));
    }

    [Fact]
    public void The_interlock_of_the_cover_is_bought()
    {
        var built = Build(Of(false, Cover));
        Assert.Contains("interlock", Text(built), StringComparison.Ordinal);
        Assert.Equal(Pieces(built, "CoverMotor"), Pieces(built, "ReversingInterlock"));
        Assert.True(Pieces(built, "ReversingInterlock") > 0);
    }

    [Fact]
    public void A_frame_can_come_back_from_its_end_switch()
    {
        var built = Build(Of(true, Turning));
        var back = Pieces(built, "Diode") == 2 || Text(built).Contains("cores back to the box", StringComparison.Ordinal);
        Assert.True(back, Text(built));
        Assert.Equal(2, Pieces(built, "LimitSwitch"));
    }

    [Fact]
    public void No_fuse_is_run_at_its_rating()
    {
        foreach (var built in new[] { Build(Of(false, Cover)), Build(Of(true, Turning)), Build(Of(true)) })
            Assert.All(WireWriter.Of(built).Where(w => w.Volts < 230 && w.CurrentA > 0), w => Assert.True(w.FuseA >= (1.25 * w.CurrentA) - 0.02, w.ToString()));
    }

    [Fact]
    public void Each_branch_of_low_voltage_has_a_fuse_of_its_own_with_its_amperes_on_the_list()
    {
        var built = Build(Of(true, Turning));
        var fuses = built.Parts.Where(p => p.Part is SmallPart { Role: SmallPartRole.Fuse }).ToList();
        Assert.True(fuses.Count >= 5, $"{fuses.Count} fuses");
        Assert.All(fuses, f => Assert.Matches(@"(T|gG) \d+(\.\d+)? A", f.Purpose.Why));
    }

    [Fact]
    public void The_breaker_stands_where_the_cable_begins()
    {
        var built = Build(Of(false, Heater));
        foreach (var role in new[] { "CircuitBreaker", "ResidualCurrentDevice" })
            Assert.Contains(built.Parts, p => RoleOf(p) == role && p.Purpose.Where.Contains("beginning of the", StringComparison.Ordinal));
    }

    [Fact]
    public void A_breaker_of_curve_C_behind_85_metres_of_thin_cable_is_refused()
    {
        // 0.35 Ω and 2 x (85 + 3) m of 2.5 mm² at 70 °C: 1.91 Ω, of which a C16 allows 1.37.
        var refused = Refused(Of(false, ("heater", "fan-heater-1kw"), ("heater_set_c", 4)), near: false, change: all => all
            .Where(p => p is not SmallPart { Role: SmallPartRole.CircuitBreaker } || p.Id == "breaker-16a-c")
            .Where(p => p is not Cable { MaxVolts: > 400 } || p.Id == "mains-3x2-5"));
        Assert.Contains(refused, c => c.Id == "loop-impedance" && c.Sentence.Contains("1.91", StringComparison.Ordinal));
    }

    [Fact]
    public void Each_supply_has_an_enclosure()
    {
        var built = Build(Of(true));
        Assert.Equal(2, built.Supply!.Lines.Count);
        Assert.Equal(2, Pieces(built, "SupplyBox"));
    }

    [Fact]
    public void A_light_sensor_gives_the_word_and_does_not_switch_the_motors()
    {
        // Six coils of 2 W at 24 V are half an ampere: a sensor of 0.3 A needs a relay, and is refused without.
        Assert.DoesNotContain(Refused(Of(false, Cover), Weak(0.3, "LightSensor")), c => c.Sentence.Contains("light sensor", StringComparison.Ordinal));
        Assert.Contains(Refused(Of(false, Cover), Weak(0.3, "LightSensor", "Relay")), c => c.Sentence.Contains("light sensor", StringComparison.Ordinal));
    }

    [Fact]
    public void A_motor_that_starts_with_18_amperes_is_not_left_to_contacts_of_5_and_10()
    {
        var built = Build(Of(true, [.. Turning, ("drive", "wiper-motor-worm")]));
        Assert.All(built.Parts.Where(p => RoleOf(p) == "ReversingInterlock"), p => Assert.True(((SmallPart)p.Part).RatedA >= 18));
        Assert.Contains("cores back to the box", Text(built), StringComparison.Ordinal);
        Assert.Contains(built.Parts, p => RoleOf(p) == "LimitSwitch");
    }

    [Fact]
    public void Fifty_square_metres_are_not_drawn_by_two_motors()
    {
        // Walls of 9.5 m², gables of 6.9 and roof sides of 8.5: six screens, each with a motor for up to 12 m².
        Assert.Equal(6, Pieces(Build(Of(false, Cover)), "CoverMotor"));
    }

    [Fact]
    public void A_heater_has_its_cut_out_and_a_circuit_of_its_own()
    {
        Assert.Equal(1, Pieces(Build(Of(false, Heater)), "HighLimit"));
        var both = Build(Of(false, [.. Heater, .. Cover]));
        var breakers = both.Parts.Where(p => RoleOf(p) == "CircuitBreaker").ToList();
        Assert.Equal(3, breakers.Count);
        Assert.Contains(breakers, p => p.Purpose.Why.Contains("own for the stand-by heater", StringComparison.Ordinal));
    }

    [Fact]
    public void A_greenhouse_can_be_cut_off_and_has_its_earth_named()
    {
        var built = Build(Of(false, Heater));
        Assert.All(["Isolator", "SocketOutlet", "EarthRod"], role => Assert.Equal(1, Pieces(built, role)));
        Assert.Equal(20, Pieces(built, "WarningTape"));
        Assert.Contains("licensed person's choice", Text(built), StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_outside_its_box_has_a_cable()
    {
        // The sensor at the collector, 17 m away; the light sensor at the frame likewise, with three cores.
        var built = Build(Of(true, Turning));
        var wires = WireWriter.Of(built);
        Assert.Contains(wires, w => w.Device.StartsWith("Temperature sensor", StringComparison.Ordinal) && w.CableM == 17);
        Assert.Contains(wires, w => w.Device.Contains("light sensor", StringComparison.Ordinal) && w.CableM == 17 && w.Cable.Contains("3 x", StringComparison.Ordinal));
        Assert.Contains(wires, w => w.Device.Contains("thermostat", StringComparison.Ordinal) && w.CableM == 3 && w.Cable.Contains("4 x", StringComparison.Ordinal));
    }

    [Fact]
    public void A_box_that_lets_splashes_in_is_refused()
    {
        var refused = Refused(Of(true), all => all.Select(p => p is SmallPart { Role: SmallPartRole.ControlBox } s ? s with { Ip = 40 } : p));
        Assert.Contains(refused, c => c.Sentence.Contains("IP44", StringComparison.Ordinal) && c.Sentence.Contains("IP40", StringComparison.Ordinal));
    }

    [Fact]
    public void The_controls_own_draw_is_counted_where_there_is_no_collector()
    {
        var line = Build(Of(false, Cover)).Supply!.Lines.Single();
        // Six motors of 60 W, six interlocks of 2 W, one sensor of 1 W.
        Assert.Equal(373, line.Watts, 1e-9);
    }

    [Fact]
    public void A_breaker_that_does_not_state_its_curve_is_not_trusted()
    {
        var refused = Refused(Of(false, Heater), all => all.Select(p => p is SmallPart { Role: SmallPartRole.CircuitBreaker } s ? s with { TripsAt = null } : p));
        Assert.Contains(refused, c => c.Id is "loop-impedance" or "parts");
    }

    [Fact]
    public void A_diode_that_breaks_down_is_not_taken()
    {
        // Then the end switches cut the coils instead.
        var built = Build(Of(true, Turning), all => all.Select(p => p is SmallPart { Role: SmallPartRole.Diode } s ? s with { Volts = 50 } : p));
        Assert.Equal(0, Pieces(built, "Diode"));
        Assert.Contains("cores back to the box", Text(built), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, "slew-200nm")]
    [InlineData(true, "wiper-motor-worm")]
    [InlineData(true, "screw-actuator-80nm")]
    [InlineData(false, "cover")]
    [InlineData(false, "heater")]
    [InlineData(false, "tube heater")]
    public void A_sound_wiring_passes(bool solar, string what)
    {
        (string, object)[] choices = what switch
        {
            "cover" => Cover,
            "heater" => Heater,
            "tube heater" => [("heater", "tube-heater-500"), ("heater_set_c", 4)],
            _ => [.. Turning, ("drive", what)],
        };
        string[] wiring = ["bears-running", "bears-design-night", "cable-fuse", "loop-impedance", "voltages-apart", "parts", "cable-drop", "start-drop", "start-current", "supply-power"];
        var refused = Refused(Of(solar, choices), all => all);
        Assert.Empty(refused.Where(c => wiring.Contains(c.Id)).Select(c => c.Id + ": " + c.Sentence));
    }

    [Fact]
    public void Eighty_five_metres_get_a_cable_thick_enough_to_trip()
    {
        Assert.DoesNotContain(Refused(Of(false, ("heater", "fan-heater-3kw"), ("heater_set_c", 4)), all => all, false), c => c.Id is "loop-impedance" or "parts");
    }

    private static (bool Solar, (string, object)[] Choices) Of(bool solar, params (string, object)[] choices) => (solar, choices);

    private static string RoleOf(NeededPart needed) => needed.Part is SmallPart small ? small.Role.ToString() : "";

    private static decimal Pieces(BuiltLayout built, string role) => built.Parts.Where(p => RoleOf(p) == role).Sum(p => p.Quantity);

    private static string Text(BuiltLayout built) => string.Join('\n', WireWriter.Of(built).Select(w => $"{w.Device}; {w.SwitchedBy}; {w.Stops}"));

    private static Func<IEnumerable<IPart>, IEnumerable<IPart>> Weak(double amperes, params string[] roles) =>
        all => all.Select(p => p switch
        {
            SmallPart small when roles.Contains(small.Role.ToString()) => small with { RatedA = amperes },
            SolarController controller when roles.Contains(nameof(SolarController)) => controller with { RatedA = amperes },
            _ => p,
        });

    private static BuiltLayout Build((bool Solar, (string, object)[] Choices) what, Func<IEnumerable<IPart>, IEnumerable<IPart>>? change = null, bool near = true) => Built(what, change, near).Built;

    private static List<Check> Refused((bool Solar, (string, object)[] Choices) what, Func<IEnumerable<IPart>, IEnumerable<IPart>> change, bool near = true)
    {
        var (scenario, built) = Built(what, change, near);
        return [.. Checked.Of(scenario, built, 0, 0, -18, []).Where(c => !c.Passed)];
    }

    private static (Scenario Scenario, BuiltLayout Built) Built((bool Solar, (string, object)[] Choices) what, Func<IEnumerable<IPart>, IEnumerable<IPart>>? change, bool near)
    {
        using var small = new SmallScenario(near ? [Near] : []);
        var scenario = small.Read();
        var layout = what.Solar ? SmallScenario.Solar(scenario, what.Choices) : SmallScenario.Of(scenario, what.Choices);
        if (change is not null)
            scenario = scenario with { Catalogue = Catalogue.Of(change(scenario.Catalogue.All)) };
        return (scenario, LayoutBuilder.Build(scenario, layout));
    }
}
