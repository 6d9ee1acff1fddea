using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>What the other rooms chose for a season: tests and what they decide, dressings, cores. What is left out is not
/// said.</summary>
internal sealed record SeasonChoices
{
    /// <summary>Whether a laboratory saw the soil, on whatever day.</summary>
    internal bool IsTested { get; init; }

    /// <summary>How a sample is taken: depth and cores.</summary>
    internal string? SampleHow { get; init; }

    /// <summary>The days between which the next sample is due.</summary>
    internal DayWindow? NextSample { get; init; }

    /// <summary>The day by which a test decides before sowing; null to have it counted back.</summary>
    internal DateOnly? TestOn { get; init; }

    /// <summary>The kinds such a test decides on, each with its pH.</summary>
    internal string? TestDecides { get; init; }

    /// <summary>The day of a test when the lime has about its full effect.</summary>
    internal DateOnly? LateTestOn { get; init; }

    /// <summary>The kinds that later test decides on, each with its pH.</summary>
    internal string? LateTestDecides { get; init; }

    /// <summary>The numbers of the dressings of lime of the first day; none where it is one.</summary>
    internal ImmutableArray<int> FirstDressings { get; init; } = [];

    /// <summary>Whether the laboratory must be asked first of which lime its rate is.</summary>
    internal bool IsLimeRateAsked { get; init; }

    /// <summary>Whether there are several fertilizers, which are spread each by itself.</summary>
    internal bool HasSeveralFertilizers { get; init; }

    /// <summary>The crop that stands and is mown before the seed; null where it has no name.</summary>
    internal CropKind? CoverKind { get; init; }

    /// <summary>The share of a full stand below which a stand is thickened; null for half of it.</summary>
    internal double? ThickenBelow { get; init; }

    /// <summary>Whether what stands is thinner than that.</summary>
    internal bool IsThin { get; init; }

    /// <summary>The day by which the sample is sent in; null to have it counted back.</summary>
    internal DateOnly? SampleBy { get; init; }

    /// <summary>The last day of the next sample, where it is later than the window says.</summary>
    internal DateOnly? NextSampleBy { get; init; }

    /// <summary>The day by which lime must have gone on for a test to tell anything; null where it is known to.</summary>
    internal DateOnly? TestIfLimedBy { get; init; }

    /// <summary>Whether the weights of the seed are not known yet.</summary>
    internal bool IsUnweighed { get; init; }

    /// <summary>A kind that would stand on limed ground of which nothing is sown; null where none is known.</summary>
    internal CropKind? CoverInstead { get; init; }

    /// <summary>Whether the potash of a stand brings its boron too.</summary>
    internal bool BringsBoron { get; init; }

    /// <summary>Whether legumes hold half of the stand.</summary>
    internal bool LegumesLead { get; init; }

    /// <summary>The published days for seed of what stands there, as text.</summary>
    internal string? SeedingDates { get; init; }
}
