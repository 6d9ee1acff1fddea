using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A reading in another unit or by another extractant, beside the reading it came from.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ReadingConversion : IWorkedResult
{
    private readonly ImmutableArray<ConversionStep> steps;
    private readonly Func<IEnumerable<Finding>> remarks;

    internal ReadingConversion(
        SoilReading original,
        SoilReading converted,
        ImmutableArray<ConversionStep> steps,
        Func<IEnumerable<Finding>> remarks
    )
    {
        Original = original;
        Converted = converted;
        this.steps = steps;
        this.remarks = remarks;
    }

    /// <summary>Gets the reading as printed.</summary>
    public SoilReading Original { get; }

    /// <summary>Gets the reading in the unit asked for.</summary>
    public SoilReading Converted { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(remarks());

    /// <summary>The remarks in the order of the walk.</summary>
    internal IEnumerable<Finding> Remarks() => remarks();

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. steps.SelectMany(s => s.Origin?.Sources ?? []).Distinct()];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. steps.Select(s => s.Line())];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
