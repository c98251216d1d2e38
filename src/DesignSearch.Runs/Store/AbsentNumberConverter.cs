using System.Text.Json;
using System.Text.Json.Serialization;

namespace DesignSearch.Runs.Store;

/// <summary>Writes a number that does not exist (the temperature of a tank that is not there) as null, and reads it back.</summary>
internal sealed class AbsentNumberConverter : JsonConverter<double>
{
    public override bool HandleNull => true;

    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Null ? double.NaN : reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (double.IsFinite(value))
            writer.WriteNumberValue(value);
        else
            writer.WriteNullValue();
    }
}
