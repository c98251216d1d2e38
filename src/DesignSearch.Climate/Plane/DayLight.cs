using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Plane;

/// <summary>One day as the light sensor of a mount sees it, in hours since the start of the winter.</summary>
/// <param name="Dawn">When the light first exceeds the upper level [h].</param>
/// <param name="Dusk">When it falls below the lower level [h].</param>
internal readonly record struct DayLight(double Dawn, double Dusk)
{
    /// <summary>Every day of a winter. The light runs straight between the middles of the hours.</summary>
    public static List<DayLight> Of(Winter winter, LightSensor sensor)
    {
        var days = new List<DayLight>();
        var light = winter.GlobalWPerM2;
        double? dawn = null;
        for (var h = 1; h < light.Length; h++)
        {
            if (dawn is null && light[h] > sensor.OnWPerM2)
            {
                dawn = light[h - 1] >= sensor.OnWPerM2 ? h - 0.5 : h - 0.5 + (sensor.OnWPerM2 - light[h - 1]) / (light[h] - light[h - 1]);
            }
            else if (dawn is not null && light[h] < sensor.OffWPerM2)
            {
                days.Add(new(dawn.Value, h - 0.5 + (light[h - 1] - sensor.OffWPerM2) / (light[h - 1] - light[h])));
                dawn = null;
            }
        }

        return days;
    }
}
