using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>How to take the soil sample that a plan lacks: what to carry to the plot and what to write on the form, and what can
/// be settled before.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SamplingCard : IWorkedResult
{
    private readonly PlotPlan plan;

    internal SamplingCard(PlotPlan plan, SamplingAdvice advice)
    {
        this.plan = plan;
        Advice = advice;
    }

    /// <summary>Gets cores and depth.</summary>
    public SamplingAdvice Advice { get; }

    /// <summary>Gets the crop to name on the form for what is to be grown; null without kinds.</summary>
    public string? CropToName => SamplingCrops.For(plan);

    /// <summary>Gets whether a buffer reading is to be asked for: not where even the lowest pH of an own reading lies above the
    /// pH from which none is run.</summary>
    public bool NeedsBuffer => plan.HomePh is not { } read || read.Low.Value < SamplingCardLines.NoBufferFrom;

    /// <summary>Gets the day by which the sample should be sent, so that lime has time to work; null without a day of
    /// planting.</summary>
    public DateOnly? SendBy => plan.PlantingDate?.AddMonths(-SamplingCardLines.Months);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Advice.Sources.Concat(SamplingCardLines.Sources).Distinct().OrderBy(s => s.Id, StringComparer.Ordinal)];

    /// <summary>What the card says, a word and a sentence each.</summary>
    internal ImmutableArray<(string Word, string Text)> Lines =>
        [.. SamplingCardLines.Of(plan, Advice, CropToName, NeedsBuffer, SendBy)];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => Advice.ShowWork();

    /// <summary>Cores and depth.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
