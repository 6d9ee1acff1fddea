using System.Collections.Immutable;
using PlotAgronomy.Blends;

namespace PlotAgronomy.Planning;

/// <summary>The seed to weigh out and buy, and how crowded the stand will be.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedAnswer
{
    internal SeedAnswer() { }

    /// <summary>Gets the kinds as one blend.</summary>
    public required Blend Blend { get; init; }

    /// <summary>Gets the blend weighed out for the plot.</summary>
    public required BlendBatch Batch { get; init; }

    /// <summary>Gets how crowded the stand will be.</summary>
    public required CrowdingReport Crowding { get; init; }

    /// <summary>Gets each kind with its lot, in the order of the plan.</summary>
    public required ImmutableArray<SownKind> Kinds { get; init; }
}
