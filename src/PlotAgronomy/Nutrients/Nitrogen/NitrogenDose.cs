namespace PlotAgronomy.Nutrients;

/// <summary>One part of a split nitrogen dressing.</summary>
public sealed class NitrogenDose
{
    internal NitrogenDose(ApplicationRate low, ApplicationRate high, string when, string sourceId)
    {
        Low = low;
        High = high;
        When = when;
        SourceId = sourceId;
    }

    /// <summary>Gets the lower end of the dose.</summary>
    public ApplicationRate Low { get; }

    /// <summary>Gets the upper end of the dose.</summary>
    public ApplicationRate High { get; }

    /// <summary>Gets when it is spread.</summary>
    public string When { get; }

    /// <summary>Gets the id of the source of the split.</summary>
    public string SourceId { get; }
}
