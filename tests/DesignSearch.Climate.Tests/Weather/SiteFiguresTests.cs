using System.Text;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Years with the published monthly figures of real places, written as the provider of each writes them: what is read back has those figures.</summary>
public sealed class SiteFiguresTests
{
    [Theory]
    [InlineData("chile", "pvgis")]
    [InlineData("italy", "pvgis")]
    [InlineData("redmond", "tmy3")]
    [InlineData("greensboro", "tmy3")]
    [InlineData("colorado", "nsrdb")]
    [InlineData("chile", "plain")]
    [InlineData("redmond", "plain")]
    public void The_months_of_the_file_are_the_months_of_the_place(string site, string format)
    {
        var climate = ReferenceSites.Named(site);
        var days = new SyntheticDays(climate.Place, new DateTime(2021, 1, 1), 365);
        var weather = SyntheticWinter.Hours(climate, days, 3, UsualDays.Of(climate, new()));
        var record = TempFile.Read(Write(climate.Place, weather, format));
        Assert.Equal(climate.Place.ZoneHours, record.Place.ZoneHours);
        for (var m = 0; m < 12; m++)
        {
            Assert.Equal(climate.Months[m].MeanC, record.Summary.Months[m].MeanC, 0.05);
            Assert.Equal(climate.Months[m].GhiKwhPerM2Day, record.Summary.Months[m].GhiKwhPerM2Day, 0.02);
        }

        Assert.Equal(Math.Round(weather.AirC.Min(), 1), record.Summary.Months.Min(m => m.LowestC), 0.06);
        Assert.Equal(weather.AirC.Count(t => Math.Round(t, format == "tmy3" ? 1 : 2) < 0), record.Summary.FrostHours, 3.0);
    }

    private static string Write(Place place, HourWeather weather, string format)
    {
        var text = new StringBuilder(MadeSky.F(format switch
        {
            "tmy3" => $"1,\"SITE\",XX,{place.ZoneHours:0.0},{place.LatitudeDeg:0.000},{place.LongitudeDeg:0.000},800\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DHI (W/m^2),Dry-bulb (C),Dew-point (C),Wspd (m/s)\n",
            "nsrdb" => $"Latitude,Longitude,Time Zone,Elevation,Local Time Zone,Temperature Units\n{place.LatitudeDeg:0.00},{place.LongitudeDeg:0.00},{place.ZoneHours:0},800,{place.ZoneHours:0},f\nYear,Month,Day,Hour,Minute,Wind Speed,DHI,GHI,Dew Point,Temperature\n",
            "pvgis" => $"Latitude (decimal degrees): {place.LatitudeDeg:0.000}\nLongitude (decimal degrees): {place.LongitudeDeg:0.000}\nElevation (m): 800\nIrradiance Time Offset (h): 0.0\nmonth,year\n1,2005\ntime(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\n",
            _ => $"# designsearch weather\n# latitude: {place.LatitudeDeg}\n# longitude: {place.LongitudeDeg}\n# zone_hours: {place.ZoneHours}\n# stamp: start\ntime,global_w_per_m2,diffuse_w_per_m2,air_c,wind_at_2m_m_per_s\n",
        }));
        var shift = format == "pvgis" ? (int)-place.ZoneHours : 0;
        for (var row = 0; row < weather.Hours; row++)
        {
            var h = (row - shift + weather.Hours) % weather.Hours;
            var t = new DateTime(2021, 1, 1).AddHours(row);
            var (air, dew, wind, global, diffuse) = (weather.AirC[h], weather.DewPointC[h], weather.WindMPerS[h], weather.GlobalWPerM2[h], weather.DiffuseWPerM2[h]);
            text.Append(MadeSky.F(format switch
            {
                "tmy3" => $"{t:MM/dd}/{1990 + t.Month * 7 % 11},{t.Hour + 1:00}:00,{global:0},{diffuse:0},{air:0.0},{dew:0.0},{wind:0.0}\n",
                "nsrdb" => $"{t.Year},{t.Month},{t.Day},{t.Hour},30,{wind:0.0},{diffuse:0},{global:0},{dew:0.0},{air * 1.8 + 32:0.00}\n",
                "pvgis" => $"{2005 + t.Month % 5}{t:MMdd}:{t:HH}00,{air:0.00},80.00,{global:0.00},0.00,{diffuse:0.00},300.00,{wind:0.00},10.0,95000.0\n",
                _ => $"{t:yyyy-MM-dd HH:mm},{global:0.0},{diffuse:0.0},{air:0.00},{wind * 0.748:0.00}\n",
            }));
        }

        return text.ToString();
    }
}
