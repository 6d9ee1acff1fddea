namespace PlotAgronomy.Seeds;

/// <summary>Lowest and highest published rate for one way of sowing, in pure live seed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PureLiveSeedRateRange
{
    private PureLiveSeedRateRange(PureLiveSeedRate low, PureLiveSeedRate high)
    {
        Low = low;
        High = high;
    }

    /// <summary>Gets the lowest published rate.</summary>
    public PureLiveSeedRate Low { get; }

    /// <summary>Gets the highest published rate.</summary>
    public PureLiveSeedRate High { get; }

    /// <summary>Gets the rate half way between, used where one number is needed.</summary>
    public PureLiveSeedRate Middle => PureLiveSeedRate.FromRate((Low.Rate + High.Rate) * 0.5, Low.Method);

    /// <summary>Gets how the seed is sown.</summary>
    public SowingMethod Method => Low.Method;

    /// <summary>A range of the user's own, or of another publication.</summary>
    /// <param name="low">Lowest rate; above 0.</param>
    /// <param name="high">Highest rate, not below the lowest, sown the same way.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentException">Different ways of sowing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The lowest is zero or above the highest.</exception>
    public static PureLiveSeedRateRange Between(PureLiveSeedRate low, PureLiveSeedRate high)
    {
        if (low.Method != high.Method)
        {
            throw new ArgumentException(
                $"Both ends of a range must be sown the same way, found {low.Method} and {high.Method}.",
                nameof(high)
            );
        }

        Guard.Above(low.PoundsPerAcre, 0, "lb PLS/ac", nameof(low));
        Guard.AtLeast(high.PoundsPerAcre, low.PoundsPerAcre, "lb PLS/ac", nameof(high));
        return new(low, high);
    }

    /// <summary>Text such as <c>3-8 lb PLS/ac, broadcast</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string low = Amounts.Print(Low.PoundsPerAcre, 3);
        string high = Amounts.Print(High.PoundsPerAcre, 3);
        return $"{low}-{high} lb PLS/ac, {SowingMethods.InWords(Method)}";
    }

    internal PureLiveSeedRateRange SownBy(SowingMethod method) =>
        new(PureLiveSeedRate.FromRate(Low.Rate, method), PureLiveSeedRate.FromRate(High.Rate, method));
}
