namespace PlotAgronomy.Fertilizers;

/// <summary>One figure of a material with the source it stands in.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class CatalogFigure
{
    internal CatalogFigure(double value, Origin origin) => (Value, Origin) = (value, origin);

    /// <summary>Gets the value, in the unit the property that holds it names.</summary>
    public double Value { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the figure is known to stand there.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>The figure and where it stands.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Value, 4)} ({Origin})";
}
