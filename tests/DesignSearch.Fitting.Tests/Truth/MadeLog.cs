using System.Globalization;
using System.Text;

namespace DesignSearch.Fitting.Tests.Truth;

/// <summary>What loggers and meter of a true house would have written, every five minutes.</summary>
/// <param name="Start">Local standard time of the first reading.</param>
/// <param name="InsideC">Air inside.</param>
/// <param name="OutsideC">Air outside.</param>
/// <param name="HeaterW">Heater, mean since the last reading.</param>
internal sealed record MadeLog(DateTime Start, double[] InsideC, double[] OutsideC, double[] HeaterW)
{
    public const int StepMinutes = 5;

    public int Count => InsideC.Length;

    /// <summary>A table of every so many minutes: the heater by its meter.</summary>
    public string Csv(int everyMinutes = 10, string heater = "heater_kwh", Func<int, string>? stamp = null)
    {
        var text = new StringBuilder($"time,inside_c,outside_c{(heater.Length > 0 ? "," + heater : "")}\n");
        var kwh = 0.0;
        for (var i = 0; i < Count; i++)
        {
            if (i * StepMinutes % everyMinutes == 0)
            {
                text.Append(stamp?.Invoke(i) ?? Start.AddMinutes(StepMinutes * i).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)).Append(',')
                    .Append(double.IsNaN(InsideC[i]) ? "" : InsideC[i].ToString("0.0", CultureInfo.InvariantCulture)).Append(',')
                    .Append(double.IsNaN(OutsideC[i]) ? "" : OutsideC[i].ToString("0.0", CultureInfo.InvariantCulture));
                if (heater.Length > 0)
                    text.Append(',').Append(heater switch
                    {
                        "heater_kwh" => kwh.ToString("0.00", CultureInfo.InvariantCulture),
                        "heater_on" => HeaterW[i] > 0 ? "1" : "0",
                        _ => HeaterW[i].ToString("0", CultureInfo.InvariantCulture),
                    });
                text.Append('\n');
            }

            kwh += HeaterW[i] * StepMinutes / 60 / 1000;
        }

        return text.ToString();
    }
}
