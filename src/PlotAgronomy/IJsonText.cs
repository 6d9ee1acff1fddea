namespace PlotAgronomy;

/// <summary>A value that JSON holds as one text, such as <c>"20 lb/ac"</c>, written with every digit so that it reads back
/// exactly.</summary>
/// <typeparam name="TSelf">The type itself.</typeparam>
public interface IJsonText<TSelf>
    where TSelf : struct, IJsonText<TSelf>
{
    /// <summary>Writes a value.</summary>
    /// <param name="value">Value.</param>
    /// <returns>Its text.</returns>
    /// <exception cref="NotSupportedException">The value holds more than a text can say.</exception>
    static abstract string ToJsonText(TSelf value);

    /// <summary>Reads a value.</summary>
    /// <param name="text">Its text.</param>
    /// <returns>The value.</returns>
    /// <exception cref="FormatException">The text is of another form.</exception>
    /// <exception cref="ArgumentException">A number lies outside its range.</exception>
    static abstract TSelf FromJsonText(string text);
}
