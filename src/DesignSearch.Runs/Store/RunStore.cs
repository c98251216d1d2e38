using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using DesignSearch.Files;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Store;

/// <summary>Writes and reads <c>run.json</c>.</summary>
public static class RunStore
{
    private const int MostBytes = 200_000_000;
    private const string Undamaged = "an undamaged run file; search again";

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
    public static void Save(StoredRun run, RunFolder folder) =>
        RunOutputs.Of(folder).Replace(_ => false, [(Path.GetFileName(folder.RunFile), RunOutputs.Bytes(JsonSerializer.Serialize(run, Json) + "\n"))]);

    /// <summary>Reads a finished run.</summary>
    /// <exception cref="InputException">There is none, it is damaged, or it is of another format.</exception>
    public static StoredRun Load(RunFolder folder)
    {
        if (!folder.IsFinished)
            throw new InputException(new InputFault(folder.RunFile, 0, 0, "", "the result of a search; run 'search' on this folder first"));
        if (InputFile.Read(folder.RunFile, MostBytes, out var expected) is not { } bytes)
            throw new InputException(new InputFault(folder.RunFile, 0, 0, "", expected));
        try
        {
            using var document = JsonDocument.Parse(bytes.AsMemory(bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0));
            var format = document.RootElement is { ValueKind: JsonValueKind.Object } root && root.TryGetProperty("formatVersion", out var version)
                && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) ? number : 0;
            if (format != StoredRun.CurrentFormat)
                throw new InputException(new InputFault(
                    folder.RunFile, 1, 0,
                    FormattableString.Invariant($"format {format}"),
                    FormattableString.Invariant($"format {StoredRun.CurrentFormat}; search again with this version of the program")));
            return document.Deserialize<StoredRun>(Json) ?? throw new JsonException("empty");
        }
        catch (JsonException e)
        {
            throw new InputException(new InputFault(
                folder.RunFile, (int)Math.Min(e.LineNumber ?? 0, MostBytes) + 1, (int)Math.Min(e.BytePositionInLine ?? 0, MostBytes) + 1, "", Undamaged));
        }
        catch (Exception e) when (e is InvalidOperationException or NotSupportedException or ArgumentException or OverflowException or FormatException)
        {
            // What the reader of JSON throws where a value has a kind that its place cannot take.
            throw new InputException(new InputFault(folder.RunFile, 1, 0, "", Undamaged));
        }
    }
}
