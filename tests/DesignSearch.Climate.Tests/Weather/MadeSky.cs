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

    public string PvgisTypicalJson(bool indented = false) =>
        F($"{{\"inputs\": {{\"location\": {{\"latitude\": {latitude:0.000}, \"longitude\": {longitude:0.000}, \"elevation\": 420.0, \"irradiance_time_offset\": 0.17}}, \"meteo_data\": {{\"radiation_db\": \"made\"}}}}, ")
        + "\"outputs\": {\"months_selected\": [" + string.Join(", ", Enumerable.Range(1, 12).Select(m => F($"{{\"month\": {m}, \"year\": {Year - m % 5}}}"))) + "], \"tmy_hourly\": ["
        + Rows(60, utc =>
        {
            var t = utc.AddHours(zone);
            t = t.Year == Year ? t : new DateTime(Year, t.Month, t.Day, t.Hour, 0, 0);
            var (g, d) = (Global(t.AddHours(0.17)), Diffuse(t.AddHours(0.17)));
            return F($"{{\"time(UTC)\": \"{Year - utc.Month % 5}{utc:MMdd}:{utc:HH}00\", \"T2m\": {Air(t):0.00}, \"RH\": 80.0, \"G(h)\": {g:0.00}, \"Gb(n)\": {Beam(t.AddHours(0.17)):0.00}, \"Gd(h)\": {d:0.00}, \"IR(h)\": 300.0, \"WS10m\": {Wind(t):0.00}, \"WD10m\": 10.0, \"SP\": 95000.0}},");
        }).TrimEnd('\n', ',').Replace("\n", indented ? "\n" : " ", StringComparison.Ordinal)
        + "]}, \"meta\": {\"outputs\": {\"tmy_hourly\": {\"type\": \"time series\"}}}}";

    public string PvgisHourlyJson(int slope = 0) =>
        F($"{{\"inputs\": {{\"location\": {{\"latitude\": {latitude:0.000}, \"longitude\": {longitude:0.000}, \"elevation\": 420.0}}, \"mounting_system\": {{\"fixed\": {{\"slope\": {{\"value\": {slope}, \"optimal\": false}}, \"azimuth\": {{\"value\": 0}}}}}}}}, \"outputs\": {{\"hourly\": [")
        + Rows(60, utc =>
        {
            var t = utc.AddHours(zone).AddMinutes(10);
            return F($"{{\"time\": \"{utc:yyyyMMdd}:{utc:HH}10\", \"Gb(i)\": {Global(t) - Diffuse(t):0.00}, \"Gd(i)\": {Diffuse(t):0.00}, \"Gr(i)\": 0.0, \"H_sun\": 0.0, \"T2m\": {Air(t):0.00}, \"WS10m\": {Wind(t):0.00}, \"Int\": 0.0}},");
        }).TrimEnd('\n', ',') + "]}}";

    /// <summary>Hourly lists by quantity, as open interfaces answer; times in ISO or in seconds since 1970.</summary>
    public string Era5Json(bool seconds = false, int offsetSeconds = 0)
    {
        var stamps = Enumerable.Range(0, 8760).Select(h => new DateTime(Year, 1, 1).AddHours(h)).ToArray();
        string List(Func<DateTime, string> of) => "[" + string.Join(",", stamps.Select(of)) + "]";
        DateTime Local(DateTime stamp) => stamp.AddHours(zone).AddSeconds(-offsetSeconds);
        return F($"{{\"latitude\":{latitude:0.000},\"longitude\":{longitude:0.000},\"generationtime_ms\":0.3,\"utc_offset_seconds\":{offsetSeconds},\"timezone\":\"GMT\",\"elevation\":420.0,")
            + $"\"hourly_units\":{{\"time\":\"{(seconds ? "unixtime" : "iso8601")}\",\"temperature_2m\":\"\\u00b0C\",\"relative_humidity_2m\":\"%\",\"shortwave_radiation\":\"W/m\u00b2\",\"diffuse_radiation\":\"W/m\u00b2\",\"wind_speed_10m\":\"km/h\"}},\"hourly\":{{\"time\":"
            + List(t => seconds ? F($"{(t.AddSeconds(-offsetSeconds) - DateTime.UnixEpoch).TotalSeconds:0}") : F($"\"{t:yyyy-MM-ddTHH:mm}\""))
            + ",\"temperature_2m\":" + List(t => F($"{Air(Local(t)):0.0}")) + ",\"relative_humidity_2m\":" + List(_ => "80")
            + ",\"shortwave_radiation\":" + List(t => F($"{Mean(Global, Local(t).AddHours(-1), 60):0.0}"))
            + ",\"diffuse_radiation\":" + List(t => F($"{Mean(Diffuse, Local(t).AddHours(-1), 60):0.0}"))
            + ",\"wind_speed_10m\":" + List(t => F($"{Wind(Local(t)) * 3.6:0.0}")) + "}}";
    }

    /// <summary>Cover of the sky in eighths, every third hour another.</summary>
    public static int Oktas(DateTime utc) => (utc.DayOfYear * 5 + utc.Hour / 3 * 2) % 9;

    public string IsdLite(int years = 1, bool sky = true)
    {
        var text = new StringBuilder();
        for (var t = new DateTime(Year, 1, 1); t < new DateTime(Year + years, 1, 1); t = t.AddHours(1))
            text.Append(IsdLiteRow(t, Air(t.AddHours(zone)), Dew(t.AddHours(zone)), Wind(t.AddHours(zone)), sky ? Oktas(t) : -9999));
        return text.ToString();
    }

    public static string IsdLiteRow(DateTime utc, double air, double dew, double wind, int sky) =>
        F($"{utc:yyyy} {utc:MM} {utc:dd} {utc:HH}{10 * air,6:0}{10 * dew,6:0}{-9999,6}{260,6}{10 * wind,6:0}{sky,6}{0,6}{-9999,6}\n");

    /// <summary>Reports at seven minutes to the hour, at the hour a synoptic one with the sky, once a day a summary without air.</summary>
    public string GlobalHourly() =>
        "\"STATION\",\"DATE\",\"SOURCE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\",\"REPORT_TYPE\",\"CALL_SIGN\",\"QUALITY_CONTROL\",\"WND\",\"CIG\",\"VIS\",\"TMP\",\"DEW\",\"SLP\",\"GF1\"\n"
        + Rows(60, utc =>
        {
            string Row(DateTime t, string kind, string air, string sky) => F(
                $"\"99999099999\",\"{t:yyyy-MM-ddTHH:mm:ss}\",\"4\",\"{latitude:0.000}\",\"{longitude:0.000}\",\"420.0\",\"MADE FLAT, XX\",\"{kind}\",\"99999\",\"V020\",\"260,1,N,{10 * Wind(t.AddHours(zone)):0000},1\",\"22000,1,9,N\",\"016093,1,9,9\",\"{air}\",\"{10 * Dew(t.AddHours(zone)):+0000;-0000},1\",\"99999,9\",\"{sky}\"");
            string Air10(DateTime t) => F($"{10 * Air(t.AddHours(zone)):+0000;-0000},1");
            var rows = Row(utc, "FM-12", Air10(utc), F($"{Oktas(utc):00},99,1,99,9,99,9,99999,9,99,9,99,9")) + "\n" + Row(utc.AddMinutes(53), "FM-15", Air10(utc.AddMinutes(53)), "");
            return utc.Hour == 12 ? rows + "\n" + Row(utc.AddMinutes(20), "FM-16", "+0990,2", "") : utc.Hour == 23 ? rows + "\n" + Row(utc.AddMinutes(59), "SOD  ", "+9999,9", "") : rows;
        });

    public double High(DateTime day) => Enumerable.Range(0, 144).Max(m => Air(day.AddMinutes(10 * m)));

    public double Low(DateTime day) => Enumerable.Range(0, 144).Min(m => Air(day.AddMinutes(10 * m)));

    public string Daily(string layout)
    {
        if (layout == "columns")
            return "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n"
                + Rows(1440, t => F($"\"XXM00099999\",\"{t:yyyy-MM-dd}\",\"{latitude:0.000}\",\"{longitude:0.000}\",\"420.0\",\"MADE FLAT, XX\",\"    0\",\",,W\",\"{10 * High(t),5:0}\",\",,W\",\"{10 * Low(t),5:0}\",\",,W\""));
        if (layout == "elements")
            return Rows(1440, t => F($"XXM00099999,{t:yyyyMMdd},TMAX,{10 * High(t):0},,,W,0700\nXXM00099999,{t:yyyyMMdd},TMIN,{10 * Low(t):0},,,W,0700\nXXM00099999,{t:yyyyMMdd},PRCP,0,T,,W,"));
        var text = new StringBuilder();
        foreach (var month in Enumerable.Range(1, 12))
        {
            foreach (var (element, of) in new (string, Func<DateTime, double>)[] { ("TMAX", High), ("TMIN", Low) })
            {
                text.Append(F($"XXM00099999{Year}{month:00}{element}"));
                for (var d = 1; d <= 31; d++)
                    text.Append(d <= DateTime.DaysInMonth(Year, month) ? F($"{10 * of(new DateTime(Year, month, d)),5:0}  W") : "-9999   ");
                text.Append('\n');
            }
        }

        return text.ToString();
    }

    public string Plain() => Plain(t => F($"{t:yyyy-MM-dd HH:mm}"));

    /// <summary>The plain table with stamps of another form.</summary>
    public string Plain(Func<DateTime, string> stamp) =>
        F($"# designsearch weather\n# place: Made Flat\n# latitude: {latitude:0.000}\n# longitude: {longitude:0.000}\n# elevation_m: 420\n# zone_hours: {zone:0}\n# stamp: start\n")
        + "time,air_c,humidity_pct,wind_m_per_s,global_w_per_m2,diffuse_w_per_m2\n"
        + Rows(60, t => F($"{stamp(t)},{Mean(Air, t, 60):0.00},80,{Wind(t):0.0},{Mean(Global, t, 60):0.0},{Mean(Diffuse, t, 60):0.0}"));

    public static string F(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
