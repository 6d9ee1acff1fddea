using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>When the lime will have worked, the pH to expect on planting day, what to sow meanwhile, and when to test
/// again.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeOutlook : IWorkedResult
{
    private LimeOutlook(LimeOutlookRequest request) => Request = request;

    /// <summary>Gets what was asked.</summary>
    public LimeOutlookRequest Request { get; }

    /// <summary>Gets the share of the lime that has worked on planting day.</summary>
    public required LimeReaction Worked { get; init; }

    /// <summary>Gets the share of the lime that works within a year, by its fineness; the coarse rest takes longer.</summary>
    public LimeReaction WorkedInAYear => LimeReaction.After(Request.Material, LimingConstants.All["first-year"]);

    /// <summary>Whether a coarse rest works after the first year only.</summary>
    internal bool SomeWorksLater => WorkedInAYear.High < Fraction.One;

    /// <summary>Gets the lowest pH to expect a test to show on planting day, its error included.</summary>
    public required double ExpectedPhLow { get; init; }

    /// <summary>Gets the highest pH to expect a test to show on planting day, its error included.</summary>
    public required double ExpectedPhHigh { get; init; }

    /// <summary>Gets the day from which the lime begins to show: three months on (LIME-S17).</summary>
    public DateOnly StartsOn => Request.LimedOn.AddMonths((int)LimingConstants.All["too-young"]);

    /// <summary>Gets the day of about full effect of fine lime: six months on (LIME-S17). Coarse lime goes on working for
    /// years.</summary>
    public DateOnly FullEffectOn => Request.LimedOn.AddMonths((int)LimingConstants.All["full-effect"]);

    /// <summary>Gets the kinds whose lower limit today's soil meets: they can be sown without waiting for the lime.</summary>
    public ImmutableArray<CropKind> SowNow => [.. Request.Kinds.Where(k => k.Ph is not null && !k.IsTooSourOn(Request.Soil))];

    /// <summary>Gets the kinds to hold back until the lime has worked.</summary>
    public ImmutableArray<CropKind> HoldBack => HeldBack.Of(Request.Kinds, Request.Soil);

    /// <summary>Gets the kinds whose lower limit is not known.</summary>
    public ImmutableArray<CropKind> LimitUnknown => [.. Request.Kinds.Where(k => k.Ph is null)];

    /// <summary>Gets the day by which to test before sowing; null where no kind is held back, or the day is past.</summary>
    public DateOnly? TestBeforeSowingOn =>
        Request.PlantingOn.AddMonths(-(int)LimingConstants.All["test-before-sowing"]) is var day
        && day > Request.LimedOn
        && !HoldBack.IsEmpty
            ? day
            : null;

    /// <summary>Gets the day by which to test again, in the same season and to the same depth.</summary>
    public required DateOnly RetestOn { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. TimeFindings(Request, Worked.Months),
            .. HeldBack.Findings(HoldBack, Request.Soil),
            .. LimitUnknown.Select(k => FindingCatalog.Create(LimingCodes.KindLimitUnknown, ("kind", k.ShortName))),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. LimeReaction
                .Sources.Concat(LimingConstants.All.Find("full-effect").Origin.Sources)
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];

    /// <summary>Looks ahead.</summary>
    /// <param name="request">Soil, lime and dates.</param>
    /// <returns>The outlook.</returns>
    /// <exception cref="ArgumentException">Planting before liming.</exception>
    /// <remarks>expected pH = pH + (target - pH) x share delivered x share worked (straight line, PRACTICE), less or more the
    /// error of a reading (0.1, LIME-S38). Lime left on the surface changes only the top inches, so the lower figure then rests
    /// on today's pH. Next test: 12 months after more than
    /// 1 ton/ac or on weakly buffered soil (PRACTICE); else 2 years on sand, 3 on others (LIME-S7).</remarks>
    public static LimeOutlook For(LimeOutlookRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        Guard.Defined(request.Placement);
        if (request.PlantingOn < request.LimedOn)
        {
            throw new ArgumentException("Planting must not come before liming.", nameof(request));
        }

        double months = (request.PlantingOn.DayNumber - request.LimedOn.DayNumber) / ExactUnits.DaysPerMonth;
        var worked = LimeReaction.After(request.Material, months);
        double ph = request.SoilPh;
        double target = request.Rate.TargetPh;
        double delivered = request.ShareDelivered.Value;
        bool onSurface = request.Placement == LimePlacement.Surface;
        return new LimeOutlook(request)
        {
            Worked = worked,
            ExpectedPhLow = LimeTimes.ExpectedPh(ph, target, delivered, onSurface ? 0 : worked.Low.Value, -ReadingError),
            ExpectedPhHigh = LimeTimes.ExpectedPh(ph, target, delivered, worked.High.Value, ReadingError),
            RetestOn = request.LimedOn.AddMonths(MonthsToRetest(request)),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. LimeReaction.Work(Request.Material, Worked.Months),
            ExpectedLine(
                "least",
                ExpectedPhLow,
                Request.Placement == LimePlacement.Surface ? Fraction.Zero : Worked.Low,
                -ReadingError
            ),
            ExpectedLine("most", ExpectedPhHigh, Worked.High, ReadingError),
            LimingFormulas.All["lime-kinds-by-limit"].Line(Names(SowNow), ("what", "Sow now")),
            LimingFormulas.All["lime-kinds-by-limit"].Line(Names(HoldBack), ("what", "Hold back")),
            LimingFormulas.All["lime-next-test"].Line(LimeText.Date(RetestOn)),
        ];

    private static double ReadingError => LimingConstants.All["reading-error"];

    private WorkedLine ExpectedLine(string end, double answer, Fraction worked, double error) =>
        LimingFormulas
            .All["lime-expected-ph"]
            .Line(
                LimeText.Ph(answer),
                ("end", end),
                ("pH", LimeText.Ph(Request.SoilPh)),
                ("target", LimeText.Ph(Request.Rate.TargetPh)),
                ("share delivered", Amounts.Print(Request.ShareDelivered, 0)),
                ("share worked", Amounts.Print(worked, 0)),
                ("error of a reading", Amounts.Print(error, 2))
            );

    private static string Names(ImmutableArray<CropKind> kinds) =>
        kinds.IsEmpty ? "none" : string.Join(", ", kinds.Select(k => k.ShortName));

    private static int MonthsToRetest(LimeOutlookRequest request)
    {
        double delivered = request.Rate.OfBasis.ShortTonsPerAcre * request.ShareDelivered.Value;
        return (int)
            LimingConstants.All[
                request.Soil.IsWeaklyBuffered || delivered > LimingConstants.All["retest-correction-rate"]
                    ? "retest-after-correction"
                : request.Soil.Texture is SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam ? "retest-sand"
                : "retest-other"
            ];
    }

    private static IEnumerable<Finding> TimeFindings(LimeOutlookRequest request, double months)
    {
        if (request.SoilPh >= request.Rate.TargetPh)
        {
            yield return FindingCatalog.Create(
                LimingCodes.PhAtTarget,
                ("ph", LimeText.Ph(request.SoilPh)),
                ("target", LimeText.Ph(request.Rate.TargetPh))
            );
            yield break;
        }

        if (months < LimingConstants.All["too-young"])
        {
            yield return FindingCatalog.Create(
                LimingCodes.TooYoung,
                ("months", Amounts.Print(months, 1) is "1" ? "1 month" : $"{Amounts.Print(months, 1)} months")
            );
        }

        if (months < LimingConstants.All["full-effect"] && request.Kinds.Any(k => k.IsLegume))
        {
            yield return FindingCatalog.Create(LimingCodes.SeedLegumesLater);
        }

        if (request.Placement == LimePlacement.Surface)
        {
            yield return FindingCatalog.Create(LimingCodes.SurfaceSlow);
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
