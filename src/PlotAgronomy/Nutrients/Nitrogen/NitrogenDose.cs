namespace PlotAgronomy.Nutrients;

/// <summary>One part of a split nitrogen dressing.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NitrogenDose
{
    internal NitrogenDose(ApplicationRate low, ApplicationRate high, DressingTime time, string when, Source source)
    {
        Time = time;
        Low = low;
        High = high;
        When = when;
        Source = source;
    }

    /// <summary>Gets the lower end of the dose.</summary>
    public ApplicationRate Low { get; }

    /// <summary>Gets the upper end of the dose.</summary>
    public ApplicationRate High { get; }

    /// <summary>Gets the season of the dressing.</summary>
    public DressingTime Time { get; }

    /// <summary>Gets when it is spread, in words.</summary>
    public string When { get; }

    /// <summary>Gets the source of the split.</summary>
    public Source Source { get; }

    /// <summary>The same dressing with less in it.</summary>
    internal NitrogenDose Less(double lowPounds, double highPounds) =>
        new(
            ApplicationRate.FromPoundsPerAcre(Math.Max(0, Low.PoundsPerAcre - lowPounds)),
            ApplicationRate.FromPoundsPerAcre(Math.Max(0, High.PoundsPerAcre - highPounds)),
            Time,
            When,
            Source
        );

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Low} to {High}, {When}";
}
