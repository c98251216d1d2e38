using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;

namespace DesignSearch.Layouts.Systems.Skin;

/// <summary>The motors of a night cover: each face of the house has a screen or curtain, and as many motors as draw it.</summary>
/// <param name="Motor">The motor.</param>
/// <param name="PerFace">Motors for each face, in the order of the house's faces, each with what it is called.</param>
/// <param name="CableM">From the control box to a motor, one way [m].</param>
/// <param name="ByClock">Whether a timer tells them, not a light sensor.</param>
internal sealed record CoverMotors(SmallPart Motor, IReadOnlyList<(string Face, int Count)> PerFace, double CableM, bool ByClock)
{
    // What a motor draws whose row does not say (own choice): little, so that its row gets the figure.
    private const double UnstatedM2 = 1;

    // Opened and closed once a day, six minutes each (common practice, no source).
    private const double DrawingH = 0.2;

    /// <summary>How many motors.</summary>
    public int Count => PerFace.Sum(f => f.Count);

    /// <summary>Current of one while it starts [A].</summary>
    public double StartA => Math.Max(Motor.RatedA, Motor.Watts / Motor.Volts);

    /// <summary>Each motor as a device.</summary>
    public IEnumerable<Circuit> Circuits
    {
        get
        {
            foreach (var (face, count) in PerFace)
            {
                for (var i = 0; i < count; i++)
                {
                    var device = SkinWords.MotorDevice(face, i);
                    yield return new(device, Motor.Volts, Motor.Watts, CableM, SkinWords.MotorSwitch(ByClock), SkinWords.MotorStops)
                    {
                        StartA = StartA,
                        Reverses = true,
                        HoursADay = DrawingH,
                    };
                }
            }
        }
    }

    /// <summary>The motors that cost least for a house; null where the catalogue has none.</summary>
    /// <param name="task">House and shelf.</param>
    /// <param name="byClock">Whether a timer tells them, not a light sensor.</param>
    public static CoverMotors? Of(DesignTask task, bool byClock)
    {
        ArgumentNullException.ThrowIfNull(task);
        var house = task.Scenario.Greenhouse;
        CoverMotors? best = null;
        foreach (var motor in task.Shelf.Small(SmallPartRole.CoverMotor))
        {
            if (motor.Volts != SupplyPlan.ControlVolts)
                continue;
            var motors = new CoverMotors(motor, Faces(house, motor.DrawsM2 ?? UnstatedM2), house.LengthM, byClock);
            if (best is null || motors.Count * task.Shelf.PriceOf(motor) < best.Count * task.Shelf.PriceOf(best.Motor))
                best = motors;
        }

        return best;
    }

    /// <summary>Lists the motors with what reverses and commands them.</summary>
    /// <param name="needs">The list.</param>
    public void List(Needs needs)
    {
        ArgumentNullException.ThrowIfNull(needs);
        needs.Add(Motor, Count, SkinWords.CoverMotor);
        Reversing.Add(needs, Count, StartA, SkinWords.Interlock, SkinWords.HandSwitch);
        // Sensor or timer give the word alone: they work the coils of the interlocks, not the motors.
        var coils = Duty.Current(PlantState.Running, Count * Reversing.CoilA(needs.Shelf, StartA));
        if (ByClock)
            needs.Contact(SmallPartRole.Timer, 1, SkinWords.Timer, coils, SupplyPlan.ControlVolts);
        else
            needs.Contact(SmallPartRole.LightSensor, 1, SkinWords.LightSensor, coils, SupplyPlan.ControlVolts, new Lead(CableM, SensorCores));
    }

    // Supply, return and signal.
    private const int SensorCores = 3;

    private static (string, int)[] Faces(Greenhouse house, double drawsM2) =>
        [.. house.Geometry.Faces.Select(f => (SkinWords.Face(house.Shape, f.Kind), (int)Math.Ceiling((f.AreaM2 / drawsM2) - 1e-9)))];
}
