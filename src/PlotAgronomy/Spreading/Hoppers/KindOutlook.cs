using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>What a mixed hopper would do to one kind: two bounds, and the kind alone at the same gate.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindOutlook
{
    internal KindOutlook() { }

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

    /// <summary>Gets the part of its load that is left when the plot is walked, if the hopper stays mixed.</summary>
    public required Fraction LeftIfMixed { get; init; }

    /// <summary>Gets the part of its load that is left when the plot is walked, if the hopper sifts fully.</summary>
    public required Fraction LeftIfSifted { get; init; }

    /// <summary>Gets the rate of the kind alone through this gate over its rate wanted; a pure number.</summary>
    public required double AloneTimesWanted { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.Name}: {Amounts.Print(WantedPlantsPerSquareFoot, 1)} plants/ft2 wanted";
}
