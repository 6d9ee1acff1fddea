using System.Text.Json;

namespace PlotAgronomy;

/// <summary>Refuses to write a type as JSON and to read it back: its quantities would lose their units, and what was read would
/// show a working nobody worked.</summary>
public sealed class NotForJson : JsonConverter<object>
{
    /// <inheritdoc/>
    public override bool CanConvert(Type typeToConvert) => true;

    /// <inheritdoc/>
    /// <exception cref="NotSupportedException">Always.</exception>
    public override object Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(typeToConvert);
        throw Refused(typeToConvert);
    }

    /// <inheritdoc/>
    /// <exception cref="NotSupportedException">Always.</exception>
    public override void Write(Utf8JsonWriter writer, object value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(value);
        throw Refused(value.GetType());
    }

    private static NotSupportedException Refused(Type type) =>
        new(
            $"{type.Name} has no JSON of its own, for units and sources would be lost. Write answers by "
                + "FieldSheet.Of(answers).ToJson(), keep a plan as the text that PlanFile.Read reads, and keep an institution, "
                + "kind, method or source by its Id."
        );
}
