namespace PlotAgronomy.Seeds;

/// <summary>Lowest and highest published rate for one way of sowing, in pure live seed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PureLiveSeedRateRange
{
    private PureLiveSeedRateRange(PureLiveSeedRate low, PureLiveSeedRate high, PureLiveSeedRate? full = null)
    {
        Low = low;
        High = high;
        Full = full ?? Middle;
    }

    /// <summary>Gets the lowest published rate.</summary>
    public PureLiveSeedRate Low { get; }

    /// <summary>Gets the highest published rate.</summary>
    public PureLiveSeedRate High { get; }

    /// <summary>Gets the rate of a full stand, used where one number is needed: the median of the middles of what three and more
    /// publications on plots and forage print; of fewer, the lowest that is printed; of a range of the user's own, the rate half
    /// way between.</summary>
    public PureLiveSeedRate Full { get; }

    /// <summary>Gets how many publications the range is the span of; none where none was read, or it is the user's own.</summary>
    public int Publications { get; private init; }

    /// <summary>Gets how many of them print seed as bought, not pure live seed; taken as living, it is the safe side.</summary>
    public int InBulk { get; private init; }

    /// <summary>Gets the rate half way between.</summary>
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

    /// <summary>Whether the lowest rate stands for a full stand because too few publications print one.</summary>
    internal bool IsFromTooFew => Choice == FullRateChoice.Lowest;

    /// <summary>How the full rate was chosen.</summary>
    internal FullRateChoice Choice { get; private init; }

    /// <summary>The broadcast range this one was made from, and the factor on its full rate; null where it stands for
    /// itself.</summary>
    internal (PureLiveSeedRateRange Broadcast, double Factor, Origin Origin)? Made { get; private init; }

    /// <summary>The drilled full rate that raised this one; null where none did.</summary>
    internal PureLiveSeedRate? RaisedBy { get; private init; }

    /// <summary>A range that publications print.</summary>
    /// <param name="low">Lowest.</param>
    /// <param name="high">Highest.</param>
    /// <param name="median">Median, where enough publications print one.</param>
    /// <param name="drilled">Full rate that is printed for a drill; of too few broadcast rates none below it is a full
    /// stand.</param>
    /// <param name="publications">How many publications, and how many of them print seed as bought.</param>
    internal static PureLiveSeedRateRange Printed(
        PureLiveSeedRate low,
        PureLiveSeedRate high,
        double? median,
        PureLiveSeedRate? drilled = null,
        (int All, int InBulk) publications = default
    )
    {
        bool isRaised = median is null && drilled is { } least && least.PoundsPerAcre > low.PoundsPerAcre;
        double pounds = isRaised
            ? SeedMath.RaisedPoundsPerAcre(low.PoundsPerAcre, high.PoundsPerAcre, drilled!.Value.PoundsPerAcre)
            : median ?? low.PoundsPerAcre;
        return new(low, high, PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(pounds), low.Method))
        {
            Publications = publications.All,
            InBulk = publications.InBulk,
            Choice = median is null ? FullRateChoice.Lowest : FullRateChoice.Median,
            RaisedBy = isRaised ? drilled : null,
        };
    }

    /// <summary>The broadcast range times factors, for another way of sowing.</summary>
    internal PureLiveSeedRateRange SownBy(SowingMethod method, double low, double full, double high, Origin origin) =>
        new(
            PureLiveSeedRate.FromRate(Low.Rate * low, method),
            PureLiveSeedRate.FromRate(High.Rate * high, method),
            PureLiveSeedRate.FromRate(Full.Rate * full, method)
        )
        {
            Publications = Publications,
            InBulk = InBulk,
            Choice = Choice,
            Made = (this, full, origin),
        };
}
