namespace PlotAgronomy.Records;

/// <summary>A reading on the day it was sampled.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class TrendPoint
{
    private TrendPoint(DateOnly on, double value, int readings) => (On, Value, Readings) = (on, value, readings);

    /// <summary>Gets the day.</summary>
    public DateOnly On { get; }

    /// <summary>Gets the reading as printed; the median where several were sampled on the day.</summary>
    public double Value { get; }

    /// <summary>Gets the readings of the day.</summary>
    public int Readings { get; }

    /// <summary>The day and the reading.</summary>
    /// <returns>Text such as <c>2024-03-01: 14.5</c>.</returns>
    public override string ToString() => $"{FieldWriter.Of(On)}: {Amounts.Print(Value, 2)}";

    internal static TrendPoint At(DateOnly on, double value, int readings = 1) => new(on, value, readings);
}
