using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads and writes fitted.toml, what a log of the house said against its drawing. Deleting the file undoes it.</summary>
public static class FittedReading
{
    /// <summary>Name of the file beside the scenario.</summary>
    public const string FileName = "fitted.toml";

    private const double LeastFactor = 0.1;
    private const double MostFactor = 10;

    /// <summary>Reads the file of a run folder.</summary>
    /// <param name="folder">The run folder.</param>
    /// <param name="files">Receives the file where it is there.</param>
    /// <param name="faults">Receives what is wrong in it.</param>
    /// <returns>Null where there is none.</returns>
    internal static HouseFit? Beside(string folder, List<(string Name, string Path)> files, FaultList faults)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
            return null;
        files.Add((FileName, path));
        var file = TomlReader.ReadFile(path, path, faults);
        file.Whole("format", 1, 1);
        var nights = file.Whole("nights", 0, 1000);
        var (loss, sun, store) = (Figure(file.Table("loss", required: true)), Figure(file.Table("sun", required: true)), file.Table("store", required: true));
        var fit = new HouseFit
        {
            Loss = loss,
            Sun = sun,
            StoreJPerK = store?.Number("capacity_j_per_k", 0, 1e9, "J/K") ?? 0,
            CouplingWPerK = store?.Number("coupling_w_per_k", 0, 1e6, "W/K") ?? 0,
            Nights = nights,
            Log = [.. file.Tables("log").Select(Log)],
        };
        store?.ReportUnknown();
        file.ReportUnknown();
        return fit;
    }

    /// <summary>The file's text.</summary>
    /// <param name="fit">What was fitted.</param>
    public static string Text(HouseFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var text = FormattableString.Invariant($"""
            # What a log of this house says against its drawing. Written by "designsearch fit"; delete this file to go back to the drawing.
            format = 1
            nights = {fit.Nights}

            # Cover, leaks and edge together, as a factor on the drawing's; low and high hold 19 of 20 times.
            [loss]
            {Lines(fit.Loss)}

            # Pots, beds, benches and frame.
            [store]
            capacity_j_per_k = {fit.StoreJPerK:0}
            coupling_w_per_k = {fit.CouplingWPerK:0.0}

            # Sun that stays in the house, as a factor on the drawing's.
            [sun]
            {Lines(fit.Sun)}

            """);
        return text.ReplaceLineEndings("\n") + string.Concat(fit.Log.Select(l => $"\n[[log]]\nname = {Quoted(l.Name)}\nsha256 = \"{l.Sha256}\"\n"));
    }

    private static string Lines(FittedFigure figure) => FormattableString.Invariant(
        $"factor = {figure.Value:0.000}\nlow = {figure.Low:0.000}\nhigh = {figure.High:0.000}\nlearnt = {(figure.IsLearnt ? "true" : "false")}");

    private static string Quoted(string name) => "\"" + VisibleText.Of(name).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";

    private static (string Name, string Sha256) Log(TomlTable table)
    {
        var log = (table.Text("name", 300), table.Text("sha256", 64));
        table.ReportUnknown();
        return log;
    }

    private static FittedFigure Figure(TomlTable? table)
    {
        if (table is null)
            return new(1, 1, 1, false);
        var value = table.Number("factor", LeastFactor, MostFactor);
        var (low, high) = (table.Number("low", 0.01, MostFactor), table.Number("high", LeastFactor, 100));
        var figure = new FittedFigure(value, Math.Min(low, value), Math.Max(high, value), table.Flag("learnt"));
        table.ReportUnknown();
        return figure;
    }
}
