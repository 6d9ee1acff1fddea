using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>A rate held against the published range for a full stand of its kind alone, sown the same way.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RateCheck : IWorkedResult
{
    private RateCheck(CropKind kind, PureLiveSeedRate rate)
    {
        Kind = kind;
        Rate = rate;
        Published = kind.FullRange(rate.Method);
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the rate.</summary>
    public PureLiveSeedRate Rate { get; }

    /// <summary>Gets the published range.</summary>
    public PureLiveSeedRateRange Published { get; }

    /// <summary>Gets the rate over the top of the range, a pure number.</summary>
    public double OverTop => Rate / Published.High;

    /// <summary>Gets the rate over the bottom of the range, a pure number.</summary>
    public double OverBottom => Rate / Published.Low;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Kind.Rates!.Evidence.Sources;

    /// <summary>Holds a rate against the published range.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="rate">Rate of pure live seed.</param>
    /// <returns>The check.</returns>
    /// <exception cref="InvalidOperationException">No full rate is published for this way of sowing.</exception>
    public static RateCheck Against(CropKind kind, PureLiveSeedRate rate)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(kind, rate);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SeedFormulas
                .All["rate-over-top"]
                .Line(
                    Amounts.Print(OverTop, 3),
                    ("rate", Amounts.Print(Rate.Rate, "lb/ac", 2)),
                    ("highest published", Amounts.Print(Published.High.Rate, "lb/ac", 2))
                )
                .From(Kind.Rates!.Evidence.Published?.FirstSource),
        ];

    private IEnumerable<Finding> Remarks()
    {
        (string, string)[] numbers =
        [
            ("rate", Amounts.Print(Rate.Rate, "lb/ac", 2)),
            ("range", Published.ToString()),
            ("kind", Kind.ShortName),
        ];
        if (OverTop > 1)
        {
            yield return FindingCatalog.Create(SeedCodes.RateAboveRange, [.. numbers, ("times", Amounts.Print(OverTop, 2))]);
        }

        if (OverTop >= SeedConstants.All["rate-factor-twice"] && Rate.Method != SowingMethod.Drilled)
        {
            yield return FindingCatalog.Create(SeedCodes.RateFactorTwice, ("kind", Kind.ShortName));
        }

        if (OverBottom < 1)
        {
            yield return FindingCatalog.Create(SeedCodes.RateBelowRange, numbers);
        }

        if (Kind.Rates!.EvidenceFor(Rate.Method).FindingFor($"the full rates of {Kind.ShortName}") is { } memory)
        {
            yield return memory;
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
