using System.CommandLine;
using System.CommandLine.Completions;
using DesignSearch.Files;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Cli.Commands;

/// <summary>parts: lists the catalogue after it was checked.</summary>
internal sealed class PartsCommand : Command
{
    public PartsCommand(Session session) : base("parts", "Lists the parts that can be bought, after checking the catalogue.")
    {
        var kind = new Argument<string?>("KIND") { HelpName = "KIND", Description = "Only parts of this kind, for instance tank.", Arity = ArgumentArity.ZeroOrOne };
        var folders = new Option<string[]>("--catalog") { Description = "A catalogue folder; may be given again. Without it: starter.", HelpName = "FOLDER" };
        kind.CompletionSources.Add(_ => SystemList.All.Kinds.Select(k => new CompletionItem(k.Name)));
        Arguments.Add(kind);
        Options.Add(folders);
        Options.Add(session.Json);
        SetAction(parsed => session.Guarded(parsed, "Reading the catalogue", line =>
        {
            var faults = new FaultList();
            var named = parsed.GetValue(folders) is { Length: > 0 } given ? given : ["starter"];
            var found = named.Select(n => (Name: n, Folder: CatalogueFolders.Find(".", n))).ToList();
            foreach (var (missing, _) in found.Where(f => f.Folder is null))
                faults.Add(missing, 0, 0, "", "a folder of catalogue files; there is none of this name");
            faults.ThrowIfAny();
            var catalogue = Catalogue.Load(found.Select(f => f.Folder!), SystemList.All.Kinds, faults);
            var wanted = parsed.GetValue(kind);
            if (wanted is not null && catalogue.Kinds.All(k => k.Name != wanted))
                faults.Add("KIND", 0, 0, wanted, "one of " + string.Join(", ", catalogue.Kinds.Select(k => k.Name)));
            faults.ThrowIfAny();
            line.End();
            var parts = catalogue.All.Where(p => wanted is null || p.Kind.Name == wanted).ToList();
            if (parsed.GetValue(session.Json))
                session.WriteJson(new { parts = parts.ConvertAll(p => (object)p) });
            else
                Tell(session.Out, parts);
            return ExitCode.Done;
        }));
    }

    private static void Tell(TextWriter output, List<IPart> parts)
    {
        foreach (var group in parts.GroupBy(p => p.Kind))
        {
            output.WriteLine($"{group.Key.Name.Replace('_', ' ')} ({group.Count()})");
            foreach (var part in group)
                output.WriteLine(FormattableString.Invariant($"  {part.Id,-34} {part.Price,9:0.00} a {part.Unit,-6} {part.Name}"));
        }
    }
}
