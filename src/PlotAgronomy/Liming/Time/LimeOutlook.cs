using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>When the lime will have worked, the pH to expect on planting day, what to sow meanwhile, and when to test
/// again.</summary>
public sealed class LimeOutlook : IWorkedResult
{
    private LimeOutlook(LimeOutlookTerms terms) => Terms = terms;

    /// <summary>Gets what was asked.</summary>
    public LimeOutlookTerms Terms { get; }

    /// <summary>Gets the share of the lime that has worked on planting day.</summary>
    public required LimeReaction Worked { get; init; }

    /// <summary>Gets the share of the lime that works within a year, by its fineness; the coarse rest takes longer.</summary>
    public LimeReaction WorkedInAYear => LimeReaction.After(Terms.Material, LimingConstants.All["first-year"]);

    /// <summary>Gets the lowest pH to expect on planting day.</summary>
    public required double ExpectedPhLow { get; init; }

    /// <summary>Gets the highest pH to expect on planting day.</summary>
    public required double ExpectedPhHigh { get; init; }

    /// <summary>Gets the day from which the lime begins to show: three months on (LIME-S17).</summary>
    public DateOnly StartsOn => Terms.LimedOn.AddMonths((int)LimingConstants.All["too-young"]);

    /// <summary>Gets the day of about full effect of fine lime: six months on (LIME-S17). Coarse lime goes on working for
    /// years.</summary>
    public DateOnly FullEffectOn => Terms.LimedOn.AddMonths((int)LimingConstants.All["full-effect"]);

    /// <summary>Gets the kinds whose lower limit today's soil meets: they can be sown without waiting for the lime.</summary>
    public ImmutableArray<CropKind> SowNow =>
        [.. Terms.Kinds.Where(k => k.Ph is { } range && range.MinimumPh <= Terms.SoilPh.Value)];

    /// <summary>Gets the kinds to hold back until the lime has worked.</summary>
    public ImmutableArray<CropKind> HoldBack =>
        [.. Terms.Kinds.Where(k => k.Ph is { } range && range.MinimumPh > Terms.SoilPh.Value)];

    /// <summary>Gets the kinds whose lower limit is not known.</summary>
    public ImmutableArray<CropKind> LimitUnknown => [.. Terms.Kinds.Where(k => k.Ph is null)];

    /// <summary>Gets the day by which to test again, in the same season and to the same depth.</summary>
    public required DateOnly RetestOn { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([.. TimeFindings(Terms, Worked.Months), .. KindFindings(Terms.SoilPh.Value, HoldBack, LimitUnknown)]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. LimeReaction
                .Sources.Concat(LimingConstants.All.Find("full-effect").Origin.Sources)
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];

    /// <summary>Looks ahead.</summary>
    /// <param name="terms">Soil, lime and dates.</param>
    /// <returns>The outlook.</returns>
    /// <exception cref="ArgumentException">Planting before liming.</exception>
    /// <remarks>expected pH = pH + (target - pH) x share delivered x share worked (straight line, PRACTICE). Lime left on the
    /// surface changes only the top inches, so the lower figure is then today's pH. Next test: 12 months after more than
    /// 1 ton/ac or on weakly buffered soil (PRACTICE); else 2 years on sand, 3 on others (LIME-S7).</remarks>
    public static LimeOutlook For(LimeOutlookTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        Guard.Defined(terms.Placement);
        if (terms.PlantingOn < terms.LimedOn)
        {
            throw new ArgumentException("Planting must not come before liming.", nameof(terms));
        }

        double months = (terms.PlantingOn.DayNumber - terms.LimedOn.DayNumber) / ExactUnits.DaysPerMonth;
        var worked = LimeReaction.After(terms.Material, months);
        double ph = terms.SoilPh.Value;
        double target = terms.Rate.TargetPh;
        double delivered = terms.ShareDelivered.Value;
        bool onSurface = terms.Placement == LimePlacement.Surface;
        return new LimeOutlook(terms)
        {
            Worked = worked,
            ExpectedPhLow = LimeTimes.ExpectedPh(ph, target, delivered, onSurface ? 0 : worked.Low.Value),
            ExpectedPhHigh = LimeTimes.ExpectedPh(ph, target, delivered, worked.High.Value),
            RetestOn = terms.LimedOn.AddMonths(MonthsToRetest(terms)),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. LimeReaction.Work(Terms.Material, Worked.Months),
            ExpectedLine("least", ExpectedPhLow, Terms.Placement == LimePlacement.Surface ? Fraction.Zero : Worked.Low),
            ExpectedLine("most", ExpectedPhHigh, Worked.High),
            LimingFormulas.All["lime-kinds-by-limit"].Line(Names(SowNow), ("what", "Sow now")),
            LimingFormulas.All["lime-kinds-by-limit"].Line(Names(HoldBack), ("what", "Hold back")),
            LimingFormulas.All["lime-next-test"].Line(LimeText.Date(RetestOn)),
        ];

    private WorkedLine ExpectedLine(string end, double answer, Fraction worked) =>
        LimingFormulas
            .All["lime-expected-ph"]
            .Line(
                LimeText.Ph(answer),
                ("end", end),
                ("pH", LimeText.Ph(Terms.SoilPh.Value)),
                ("target", LimeText.Ph(Terms.Rate.TargetPh)),
                ("share delivered", Amounts.Print(Terms.ShareDelivered, 0)),
                ("share worked", Amounts.Print(worked, 0))
            );

    private static string Names(ImmutableArray<CropKind> kinds) =>
        kinds.IsEmpty ? "none" : string.Join(", ", kinds.Select(k => k.ShortName));

    private static int MonthsToRetest(LimeOutlookTerms terms)
    {
        double delivered = terms.Rate.OfBasis.ShortTonsPerAcre * terms.ShareDelivered.Value;
        bool weak = terms.ExchangeCapacity is { } capacity && capacity.Milliequivalents < LimingConstants.All["weak-cec-limit"];
        return (int)
            LimingConstants.All[
                weak || delivered > LimingConstants.All["retest-correction-rate"] ? "retest-after-correction"
                : terms.Texture is SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam ? "retest-sand"
                : "retest-other"
            ];
    }

    private static IEnumerable<Finding> TimeFindings(LimeOutlookTerms terms, double months)
    {
        if (terms.SoilPh.Value >= terms.Rate.TargetPh)
        {
            yield break;
        }

        if (months < LimingConstants.All["too-young"])
        {
            yield return FindingCatalog.Create(LimingCodes.TooYoung, ("months", Amounts.Print(months, 1)));
        }

        if (months < LimingConstants.All["full-effect"] && terms.Kinds.Any(k => k.IsLegume))
        {
            yield return FindingCatalog.Create(LimingCodes.SeedLegumesLater);
        }

        if (terms.Placement == LimePlacement.Surface)
        {
            yield return FindingCatalog.Create(LimingCodes.SurfaceSlow);
        }
    }

    private static IEnumerable<Finding> KindFindings(
        double ph,
        ImmutableArray<CropKind> holdBack,
        ImmutableArray<CropKind> unknown
    ) =>
        [
            .. holdBack.Select(k =>
                FindingCatalog.Create(
                    LimingCodes.KindHoldBack,
                    ("kind", k.ShortName),
                    ("minimum", LimeText.Ph(k.Ph!.MinimumPh)),
                    ("ph", LimeText.Ph(ph))
                )
            ),
            .. unknown.Select(k => FindingCatalog.Create(LimingCodes.KindLimitUnknown, ("kind", k.ShortName))),
        ];
}
