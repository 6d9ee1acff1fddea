using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>What a mixed hopper would do to one kind: two bounds, and the kind alone at the same gate.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindOutlook
{
    /// <summary>Gets the kind.</summary>
    public required PassKind Kind { get; init; }

    /// <summary>Gets the stand wanted everywhere, in plants per ft2.</summary>
    public required double WantedPlantsPerSquareFoot { get; init; }

    /// <summary>Gets the stand if the hopper stays mixed: one stretch from the start until it is empty.</summary>
    public required StandStretch IfMixed { get; init; }

    /// <summary>Gets the stand if the hopper sifts fully: one stretch, before and after which the kind is missing. A stretch of
    /// no
    /// length means that the kind does not come out on the plot.</summary>
    public required StandStretch IfSifted { get; init; }

    /// <summary>Gets the rate of the kind alone through this gate over its rate wanted; a pure number.</summary>
    public required double AloneTimesWanted { get; init; }
}
