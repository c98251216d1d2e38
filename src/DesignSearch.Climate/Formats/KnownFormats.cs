namespace DesignSearch.Climate;

/// <summary>The formats that can be read.</summary>
internal static class KnownFormats
{
    public static IReadOnlyList<FormatMap> All { get; } =
    [
        new()
        {
            Id = "tmy3",
            Provider = "NSRDB typical year (TMY3), NREL and US Department of Energy",
            Detect = ["Date (MM/DD/YYYY)", "Time (HH:MM)", "GHI (W/m^2)"],
            Head = HeadKind.Positions,
            HeadKeys = new Dictionary<string, string> { ["name"] = "2", ["zone"] = "4", ["latitude"] = "5", ["longitude"] = "6", ["elevation"] = "7" },
            TimeColumns = ["Date (MM/DD/YYYY)", "Time (HH:MM)"],
            TimePattern = "MM/DD/YYYY hh:mm",
            TypicalYear = true,
            Radiation = StampMeaning.Ending,
            Fields =
            [
                new(WeatherField.Air, ["Dry-bulb"], "C", true), new(WeatherField.DewPoint, ["Dew-point"], "C"), new(WeatherField.Humidity, ["RHum"], "%"),
                new(WeatherField.Wind, ["Wspd"], "m/s"), new(WeatherField.Global, ["GHI"], "W/m2", true), new(WeatherField.Diffuse, ["DHI"], "W/m2"),
                new(WeatherField.BeamNormal, ["DNI"], "W/m2"),
            ],
            WeatherOrigin = FieldOrigin.Measured,
        },
        new()
        {
            Id = "pvgis-typical-year",
            Provider = "PVGIS typical year, (c) European Union; contains modified Copernicus Climate Change Service information",
            Detect = ["Latitude (decimal degrees)", "month,year", "time(UTC)", "G(h)"],
            Head = HeadKind.Labels,
            HeadKeys = new Dictionary<string, string>
            {
                ["latitude"] = "Latitude (decimal degrees)", ["longitude"] = "Longitude (decimal degrees)", ["elevation"] = "Elevation (m)",
                ["offsetHours"] = "Irradiance Time Offset (h)",
            },
            TimeColumns = ["time(UTC)"],
            TimePattern = "YYYYMMDD:hhmm",
            StampZoneHours = 0,
            TypicalYear = true,
            Radiation = StampMeaning.InstantOrStarting,
            Fields =
            [
                new(WeatherField.Air, ["T2m"], "C", true), new(WeatherField.Humidity, ["RH"], "%"), new(WeatherField.Wind, ["WS10m"], "m/s"),
                new(WeatherField.Global, ["G(h)"], "W/m2", true), new(WeatherField.Diffuse, ["Gd(h)"], "W/m2"), new(WeatherField.BeamNormal, ["Gb(n)"], "W/m2"),
                new(WeatherField.SkyLongWave, ["IR(h)"], "W/m2"),
            ],
        },
    ];
}
