namespace PlotAgronomy.Fertilizers;

/// <summary>One end of a manure rate: the rich lot or the poor one.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ManureRateEnd
{
    /// <summary>Gets the rate of manure.</summary>
    public required ApplicationRate Rate { get; init; }

    /// <summary>Gets the nitrogen it makes available in the season.</summary>
    public required ApplicationRate AvailableNitrogen { get; init; }

    /// <summary>Gets the P2O5 it brings.</summary>
    public required ApplicationRate Phosphate { get; init; }

    /// <summary>Gets the K2O it brings.</summary>
    public required ApplicationRate Potash { get; init; }

    /// <summary>Available pounds a ton of the nutrient it is sized by.</summary>
    internal double PoundsPerTon { get; init; }

    /// <summary>The rate and what it brings.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Rate, "ton/ac", 2)}: {Amounts.Print(AvailableNitrogen, decimals: 1)} of available N, "
        + $"{Amounts.Print(Phosphate, decimals: 1)} of P2O5, {Amounts.Print(Potash, decimals: 1)} of K2O";
}
