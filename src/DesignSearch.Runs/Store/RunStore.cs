using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using DesignSearch.Files;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Store;

/// <summary>Writes and reads <c>run.json</c>.</summary>
public static class RunStore
{
    /// <summary>How every JSON document of the program is written: camel case, indented, numbers in full, a missing temperature as null.</summary>
    public static JsonSerializerOptions Json { get; } = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new AbsentNumberConverter(), new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>Writes a run beside the old one and renames it into place.</summary>
    public static void Save(StoredRun run, RunFolder folder) => SafeFile.Write(folder.RunFile, JsonSerializer.Serialize(run, Json) + "\n");

    /// <summary>Reads a finished run.</summary>
    /// <exception cref="InputException">There is none, it is damaged, or it is of another format.</exception>
    public static StoredRun Load(RunFolder folder)
    {
        if (!folder.IsFinished)
            throw new InputException(new InputFault(folder.RunFile, 0, 0, "", "the result of a search; run 'search' on this folder first"));
        try
        {
            using var stream = File.OpenRead(folder.RunFile);
            using var document = JsonDocument.Parse(stream);
            var format = document.RootElement.TryGetProperty("formatVersion", out var version) && version.TryGetInt32(out var number) ? number : 0;
            if (format != StoredRun.CurrentFormat)
                throw new InputException(new InputFault(
                    folder.RunFile, 1, 0,
                    FormattableString.Invariant($"format {format}"),
                    FormattableString.Invariant($"format {StoredRun.CurrentFormat}; search again with this version of the program")));
            return document.Deserialize<StoredRun>(Json) ?? throw new JsonException("empty");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new InputException(new InputFault(folder.RunFile, 0, 0, "", "a file that can be read: " + e.Message.ReplaceLineEndings(" ")));
        }
        catch (JsonException e)
        {
            throw new InputException(new InputFault(folder.RunFile, (int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "", "an undamaged run file; search again"));
        }
    }
}
