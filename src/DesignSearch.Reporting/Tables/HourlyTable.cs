using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Runs.Folder;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Reporting.Tables;

/// <summary>Every hour of a simulated layout as a table that a spreadsheet plots.</summary>
public sealed class HourlyTable
{
    private static readonly string[] Fixed =
    [
        "winter", "time", "counted", "outside_c", "sky_c", "inside_c", "floor_c", "barrels_c", "tank_top_c", "tank_bottom_c", "collector_c", "pump_share", "release_w", "heater_w",
        "sun_on_collector_w_per_m2", "sun_into_house_w", "frost",
    ];

    private CsvText? text;

    /// <summary>Adds an hour; the columns of the layout's sources stand behind those that every layout has.</summary>
    /// <param name="winter">Name of its winter.</param>
    /// <param name="counted">False in the warm-up.</param>
    /// <param name="row">The hour, of the same layout as those before.</param>
    public void Add(string winter, bool counted, HourRow row)
    {
        text ??= new(
            [
                "DesignSearch hourly table, format 2",
                "hour means in local standard time; floor, barrels, tank, collector and compost at the end of the hour; 'counted' is "
                    + "0 in the warm-up",
            ],
            [.. Fixed, .. row.More.Columns.Select(c => c.Id)]);
        text.Row(
        [
            winter,
            row.LocalTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
            counted ? 1 : 0,
            Cell(row.OutsideC),
            Cell(row.SkyC),
            Cell(row.AirMeanC),
            Cell(row.FloorC),
            Cell(row.BarrelsC),
            Cell(row.TankTopC),
            Cell(row.TankBottomC),
            Cell(row.CollectorC),
            Cell(row.PumpShare),
            Cell(row.ReleaseW),
            Cell(row.HeaterW),
            Cell(row.CollectorSunWPerM2),
            Cell(row.HouseSunW),
            row.Frost ? 1 : 0,
            .. row.More.Columns.Select(c => (object?)Cell(row.More[c])),
        ]);
    }

    /// <summary>The table as a file holds it.</summary>
    /// <exception cref="InvalidOperationException">No hour was added.</exception>
    public byte[] ToFile() => RunOutputs.Bytes((text ?? throw new InvalidOperationException("No hour was added.")).ToString());

    private static double? Cell(double value) => double.IsFinite(value) ? Math.Round(value, 3) : null;
}
