namespace PlotAgronomy.Fertilizers;

/// <summary>One figure of a material with the source it stands in.</summary>
public sealed class CatalogFigure
{
    internal CatalogFigure(double value, string sourceId, DataStatus status) =>
        (Value, SourceId, Status) = (value, sourceId, status);

    /// <summary>Gets the value, in the unit the property that holds it names.</summary>
    public double Value { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well the figure is known to stand there.</summary>
    public DataStatus Status { get; }
}
