using System.Text.Json;

namespace PlotAgronomy;

/// <summary>Writes a value as one text and reads it back, without reflection. The value types name it themselves, so neither
/// options nor a context need to.</summary>
/// <typeparam name="T">Value type.</typeparam>
public sealed class JsonTextConverter<T> : JsonConverter<T>
    where T : struct, IJsonText<T>
{
    /// <inheritdoc/>
    /// <exception cref="JsonException">Not a text, a text of another form, or a number outside its range.</exception>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String
            ? FromText(reader.GetString()!)
            : throw new JsonException(
                $"A {typeof(T).Name} is a text such as \"{T.ToJsonText(default)}\", found {reader.TokenType}."
            );

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(T.ToJsonText(value));
    }

    /// <inheritdoc/>
    public override T ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        FromText(reader.GetString()!);

    /// <inheritdoc/>
    public override void WriteAsPropertyName(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WritePropertyName(T.ToJsonText(value));
    }

    private static T FromText(string text)
    {
        try
        {
            return T.FromJsonText(text);
        }
        catch (Exception error) when (error is FormatException or ArgumentException or OverflowException)
        {
            throw new JsonException($"'{text}' is no {typeof(T).Name}: {Guard.Said(error)}", error);
        }
    }
}
