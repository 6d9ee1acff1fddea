using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Planning;

/// <summary>A set of fertilizers beside the cheapest.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class OtherPurchase
{
    internal OtherPurchase() { }

    /// <summary>Gets what it is beside the cheapest.</summary>
    public required RunnerUp Is { get; init; }

    /// <summary>Gets the set.</summary>
    public required Purchase Purchase { get; init; }

    /// <summary>What it is and what it costs.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Words[Is]}: {Purchase}";

    private static readonly EnumWords<RunnerUp> Words = EnumWords<RunnerUp>.FromNames();
}
