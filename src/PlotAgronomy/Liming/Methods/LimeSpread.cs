namespace PlotAgronomy.Liming;

/// <summary>How far apart the answers of several methods are on their common basis.</summary>
internal sealed class LimeSpread
{
    private LimeSpread(ApplicationRate least, ApplicationRate most)
    {
        Least = least;
        Most = most;
    }

    internal ApplicationRate Least { get; }

    internal ApplicationRate Most { get; }

    internal ApplicationRate Difference =>
        ApplicationRate.FromPoundsPerAcre(LimeSums.Apart(Most.PoundsPerAcre, Least.PoundsPerAcre));

    internal WorkedLine Line =>
        LimingFormulas
            .All["lime-spread"]
            .Line(
                $"{LimeText.Tons(Difference.PoundsPerAcre)} ton/ac",
                ("most", LimeText.Tons(Most.PoundsPerAcre)),
                ("least", LimeText.Tons(Least.PoundsPerAcre))
            );

    /// <summary>The spread of those that have a common figure; null when fewer than two do.</summary>
    internal static LimeSpread? Of(IEnumerable<LimeMethodAnswer> answers)
    {
        ApplicationRate? least = null,
            most = null;
        int figures = 0;
        foreach (var answer in answers)
        {
            if (answer.Common is { } rate)
            {
                figures++;
                least = least is { } low && low < rate ? low : rate;
                most = most is { } high && high > rate ? high : rate;
            }
        }

        return figures < 2 ? null : new LimeSpread(least!.Value, most!.Value);
    }
}
