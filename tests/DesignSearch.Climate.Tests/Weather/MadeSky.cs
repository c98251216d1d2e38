using System.Globalization;
using System.Text;
using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Tests;

/// <summary>An invented place whose weather is known at every instant, written out in every format: what is read back must agree.</summary>
internal sealed class MadeSky(double latitude = -44.2, double longitude = 169.8, double zone = 11, int year = 2021)
{
    public Place Place { get; } = new("Made Flat", latitude, longitude, 420, zone);

    public int Year { get; } = year;

    private readonly SunTrack sun = new(new Place("", latitude, longitude, 0, 0), new DateTime(year - 1, 12, 1), new DateTime(year + 2, 1, 31));

    public double Air(DateTime local) =>
        9 + 7 * Math.Cos(2 * Math.PI * (local.DayOfYear - (latitude < 0 ? 20 : 200)) / 365) + 5 * Math.Cos(2 * Math.PI * (local.TimeOfDay.TotalHours - 15) / 24);

    public double Dew(DateTime local) => Air(local.Date.AddHours(5)) - 1;

    public static double Wind(DateTime local) => 2.5 + Math.Sin(local.DayOfYear);

    public double Global(DateTime local) => (0.5 + 0.2 * Math.Sin(local.DayOfYear * 1.7)) * sun.Horizontal(local.AddHours(-zone));

    public double Diffuse(DateTime local) => 0.5 * Global(local);

    public double Beam(DateTime local) => Diffuse(local) / Math.Max(0.05, sun.CosZenith(local.AddHours(-zone)));

    /// <summary>Mean of a quantity over the minutes after an instant.</summary>
    public static double Mean(Func<DateTime, double> of, DateTime from, double minutes) => Enumerable.Range(0, 12).Average(i => of(from.AddMinutes((i + 0.5) * minutes / 12)));

    public double MonthGhi(int month) => Enumerable.Range(0, DateTime.DaysInMonth(Year, month) * 24).Average(h => Mean(Global, new DateTime(Year, month, 1).AddHours(h), 60)) * 0.024;

    public double MonthAir(int month) => Enumerable.Range(0, DateTime.DaysInMonth(Year, month) * 24).Average(h => Air(new DateTime(Year, month, 1).AddHours(h + 0.5)));

    /// <summary>Rows of the year, one a step.</summary>
    public string Rows(int stepMin, Func<DateTime, string> row, double firstMin = 0)
    {
        var text = new StringBuilder();
        for (var m = 0; m < 365 * 1440; m += stepMin)
            text.Append(row(new DateTime(Year, 1, 1).AddMinutes(m + firstMin))).Append('\n');
        return text.ToString();
    }

    public string Tmy3() =>
        F($"123456,\"MADE FLAT\",XX,{Place.ZoneHours:0.0},{latitude:0.000},{longitude:0.000},420\n")
        + "Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),DNI (W/m^2),DNI source,GHI (W/m^2),GHI source,DHI (W/m^2),Wspd (m/s),Dew-point (C),Dry-bulb (C),RHum (%)\n"
        + Rows(60, t =>
        {
            var end = t.AddHours(1);
            var day = t.Date.AddYears(-(t.Month * 7 % 19));
            return F($"{day:MM/dd/yyyy},{t.Hour + 1:00}:00,0,{Mean(Beam, t, 60):0},1,{Mean(Global, t, 60):0.0},1,{Mean(Diffuse, t, 60):0.0},{Wind(end):0.0},{Dew(end):0.0},{Air(end):0.0},80");
        });

    public string PvgisTypical(bool means, double offsetHours) =>
        F($"Latitude (decimal degrees): {latitude:0.000}\r\nLongitude (decimal degrees): {longitude:0.000}\r\nElevation (m): 420.0\r\nIrradiance Time Offset (h): {offsetHours:0.0###}\r\nmonth,year\r\n")
        + string.Concat(Enumerable.Range(1, 12).Select(m => F($"{m},{Year - m % 5}\r\n")))
        + "time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\r\n"
        + Rows(60, utc =>
        {
            var t = utc.AddHours(zone);
            t = t.Year == Year ? t : new DateTime(Year, t.Month, t.Day, t.Hour, 0, 0);
            var (g, d) = means ? (Mean(Global, t, 60), Mean(Diffuse, t, 60)) : (Global(t.AddHours(offsetHours)), Diffuse(t.AddHours(offsetHours)));
            return F($"{Year - utc.Month % 5}{utc:MMdd}:{utc:HH}00,{Air(t):0.00},80.0,{g:0.00},{Beam(t):0.00},{d:0.00},300.0,{Wind(t):0.00},10.0,95000.0\r");
        })
        + "\r\nT2m: 2-m air temperature (degree Celsius)\r\n\r\nlegend\r\n";

    public string PvgisHourly(int slope = 0) =>
        F($"Latitude (decimal degrees):\t{latitude:0.000}\nLongitude (decimal degrees):\t{longitude:0.000}\nElevation (m):\t420\nRadiation database:\tmade\n\n\nSlope: {slope} deg.\nAzimuth: 0 deg.\n")
        + "time,Gb(i),Gd(i),Gr(i),H_sun,T2m,WS10m,Int\n"
        + Rows(60, utc =>
        {
            var t = utc.AddHours(zone);
            return F($"{utc:yyyyMMdd}:{utc:HH}10,{Global(t.AddMinutes(10)) - Diffuse(t.AddMinutes(10)):0.00},{Diffuse(t.AddMinutes(10)):0.00},0.0,0.0,{Air(t.AddMinutes(10)):0.00},{Wind(t):0.00},0.0");
        })
        + "\nlegend\n";

    public string Nsrdb(int stepMin, double firstMin = 0) =>
        "Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,Local Time Zone,GHI Units\n"
        + F($"NSRDB,1,-,-,-,{latitude:0.00},{longitude:0.00},{zone:0},420,{zone:0},w/m2\n")
        + "Year,Month,Day,Hour,Minute,Temperature,GHI,DHI,DNI,Wind Speed,Dew Point,Solar Zenith Angle\n"
        + Rows(stepMin, t => F($"{t.Year},{t.Month},{t.Day},{t.Hour},{t.Minute},{Air(t):0.0},{Global(t):0},{Diffuse(t):0},{Beam(t):0},{Wind(t):0.0},{Dew(t):0.0},0"), firstMin);

    public string Nasa(bool utc = false) =>
        "-BEGIN HEADER-\nNASA/POWER source native resolution hourly data\n"
        + F($"Dates (month/day/year): 01/01/{Year} through 12/31/{Year} in {(utc ? "UTC" : "LST")}\nLocation: Latitude  {latitude:0.0000}   Longitude {longitude:0.0000}\n")
        + "Elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = 420.00 meters\n"
        + "The value for missing source data that cannot be computed or is outside of the sources availability range: -999\nParameter(s):\n"
        + "ALLSKY_SFC_SW_DWN     All Sky Surface Shortwave Downward Irradiance (MJ/hr)\nALLSKY_SFC_SW_DIFF     All Sky Surface Shortwave Diffuse Irradiance (MJ/hr)\n"
        + "T2M     Temperature at 2 Meters (C)\nWS10M     Wind Speed at 10 Meters (m/s)\n-END HEADER-\n"
        + "YEAR,MO,DY,HR,ALLSKY_SFC_SW_DWN,ALLSKY_SFC_SW_DIFF,T2M,WS10M\n"
        + Rows(60, stamp =>
        {
            var t = stamp.AddHours(zone - (utc ? 0 : Math.Round(longitude / 15)));
            return F($"{stamp.Year},{stamp.Month},{stamp.Day},{stamp.Hour},{Mean(Global, t, 60) * 0.0036:0.00000},{Mean(Diffuse, t, 60) * 0.0036:0.00000},{Mean(Air, t, 60):0.00},{Wind(t):0.00}");
        });

    public string Era5(int offsetSeconds = 0) =>
        F($"latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation\n{latitude:0.000},{longitude:0.000},420.0,{offsetSeconds},GMT,GMT\n\n")
        + "time,temperature_2m (°C),relative_humidity_2m (%),shortwave_radiation (W/m²),diffuse_radiation (W/m²),direct_radiation (W/m²),wind_speed_10m (km/h)\n"
        + Rows(60, stamp =>
        {
            var t = stamp.AddHours(zone).AddSeconds(-offsetSeconds);
            return F($"{stamp:yyyy-MM-ddTHH:mm},{Air(t):0.0},80,{Mean(Global, t.AddHours(-1), 60):0.0},{Mean(Diffuse, t.AddHours(-1), 60):0.0},{Mean(Diffuse, t.AddHours(-1), 60):0.0},{Wind(t) * 3.6:0.0}");
        })
        + "\ntime,temperature_2m_max (°C)\n2021-01-01,20\n";

    public string Plain() =>
        F($"# designsearch weather\n# place: Made Flat\n# latitude: {latitude:0.000}\n# longitude: {longitude:0.000}\n# elevation_m: 420\n# zone_hours: {zone:0}\n# stamp: start\n")
        + "time,air_c,humidity_pct,wind_m_per_s,global_w_per_m2,diffuse_w_per_m2\n"
        + Rows(60, t => F($"{t:yyyy-MM-dd HH:mm},{Mean(Air, t, 60):0.00},80,{Wind(t):0.0},{Mean(Global, t, 60):0.0},{Mean(Diffuse, t, 60):0.0}"));

    public static string F(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
