using System.Globalization;
using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>Buffer pH together with the buffer it was read in. Without the buffer's name the number has no meaning.</summary>
/// <remarks>A buffer pH that is not on the report is null, never zero.</remarks>
/// <example>
/// <code>
/// Console.WriteLine(BufferPh.FromValue(6.4, SoilBuffer.Sikora));
/// // buffer pH 6.4 (Sikora)
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record BufferPh
{
    private BufferPh(double value, SoilBuffer buffer)
    {
        Value = value;
        Buffer = buffer;
    }

    /// <summary>Gets the pH.</summary>
    public double Value { get; }

    /// <summary>Gets the buffer.</summary>
    public SoilBuffer Buffer { get; }

    /// <summary>Gets ten times the buffer pH: the lime test index, or lime index, of some reports.</summary>
    public double LimeTestIndex => Value * 10;

    /// <summary>Creates a buffer pH.</summary>
    /// <param name="value">pH; above 0, at most 14.</param>
    /// <param name="buffer">Buffer it was read in.</param>
    /// <returns>The buffer pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">At most 0, above 14, NaN or infinite; or no such buffer.</exception>
    public static BufferPh FromValue(double value, SoilBuffer buffer) =>
        new(PhScale.Check(value), Guard.Defined(buffer));

    /// <summary>Creates a buffer pH from a lime test index such as 67, which stands for 6.7.</summary>
    /// <param name="limeTestIndex">Ten times the buffer pH; above 0, at most 140.</param>
    /// <param name="buffer">Buffer it was read in.</param>
    /// <returns>The buffer pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">At most 0, above 140, NaN or infinite; or no such buffer.</exception>
    public static BufferPh FromLimeTestIndex(double limeTestIndex, SoilBuffer buffer) =>
        new(Guard.AboveUpTo(limeTestIndex, 0, 140, "(lime test index)") / 10, Guard.Defined(buffer));

    /// <summary>Invariant text such as <c>buffer pH 6.5 (SMP)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"buffer pH {Value:0.###} ({SoilWords.For(Buffer)})");
}
