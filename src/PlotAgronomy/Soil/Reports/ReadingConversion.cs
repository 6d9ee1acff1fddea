using System.Collections.Immutable;

namespace PlotAgronomy.Soil;

/// <summary>A reading in another unit or by another extractant, beside the reading it came from.</summary>
public sealed class ReadingConversion : IWorkedResult
{
    private readonly ImmutableArray<ConversionStep> steps;

    internal ReadingConversion(
        SoilReading original,
        SoilReading converted,
        ImmutableArray<ConversionStep> steps,
        IEnumerable<Finding> findings
    )
    {
        Original = original;
        Converted = converted;
        this.steps = steps;
        Findings = Finding.InOrder(findings);
        SourceIds = [.. steps.Select(s => s.SourceId).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Gets the reading as printed.</summary>
    public SoilReading Original { get; }

    /// <summary>Gets the reading in the unit asked for.</summary>
    public SoilReading Converted { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds { get; }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. steps.Select(s => s.Line())];
}
