using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What the plot needs in lime and the cheapest way on offer to bring it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeAnswer
{
    private readonly PlotPlan plan;
    private readonly Func<DateOnly, LimeOutlook?> expectedOn;

    internal LimeAnswer(PlotPlan plan, LimeOutlook? expected, Func<DateOnly, LimeOutlook?> expectedOn)
    {
        this.plan = plan;
        Expected = expected;
        this.expectedOn = expectedOn;
    }

    /// <summary>Gets the pH that the kinds ask for.</summary>
    public required LimeTarget Target { get; init; }

    /// <summary>Gets the pH that is aimed at: the one the plan states, else of those the method has the one closest to what the
    /// kinds ask for.</summary>
    public required double TargetPh { get; init; }

    /// <summary>Gets why that pH is aimed at, in words.</summary>
    public string TargetReason => LimeRemarks.TargetReason(plan, Target, TargetPh);

    /// <summary>Gets the pH at or below which the method's institution starts to lime for that target; the target itself where
    /// it prints no margin.</summary>
    public LimeTrigger Trigger => LimeTrigger.Below(TargetPh, plan.LimeMethod.NoLimeWithinPh ?? 0);

    /// <summary>Gets the laboratory's own printed rate, which is used first; null when nothing was printed.</summary>
    public PrintedLimeRate? Printed { get; init; }

    /// <summary>Gets the printed rate held against our own sum for the same pH; null when nothing was printed.</summary>
    public PrintedLimeCheck? Check { get; init; }

    /// <summary>Gets our own sum, beside the printed rate or alone.</summary>
    public required LimeNeed Computed { get; init; }

    /// <summary>Gets the whole need, printed or by the method, of which <see cref="Rate"/> is what goes on now; null where there
    /// is
    /// none.</summary>
    internal LimeRate? Need { get; init; }

    /// <summary>Gets the kinds that today's soil is too sour for, whether or not lime is on offer: they wait for a new
    /// test.</summary>
    public ImmutableArray<CropKind> HoldBack => HeldBack.Of(plan.Kinds.Select(k => k.Kind), plan.Soil);

    /// <summary>Where the lime goes.</summary>
    internal LimePlacement Placement => LimePlacing.Of(plan);

    /// <summary>Whether the lime goes on after the seed, so that it does nothing for it.</summary>
    internal bool IsLate => plan.LimeDate > plan.PlantingDate;

    /// <summary>Gets the rule for weakly buffered soil where it caps the method's own answer; or null.</summary>
    public WeaklyBufferedLime? WeaklyBuffered { get; init; }

    /// <summary>Gets the rate that is ordered for: zero where none is needed; open where the printed rate lacks a label, or the
    /// method does not answer for this report.</summary>
    public required Answer<LimeRate> Rate { get; init; }

    /// <summary>Gets the liming materials on offer held against the rate; null when no lime is needed or none is on
    /// offer.</summary>
    public LimingMaterialComparison? Offers { get; init; }

    /// <summary>Gets the cheapest offer that can be counted; null when no lime is needed or none can be counted.</summary>
    public Offer<LimingMaterial>? Offer => Offers?.CheapestForPlot?.Offer;

    /// <summary>Gets what to buy and spread of that offer; open where none is on offer or none can be counted, with an order for
    /// each plausible label.</summary>
    public Answer<LimeOrder> Order => LimeParts.Order(Rate, Offers);

    /// <summary>Gets what the lime will have done by planting day; open where the day of liming is not known.</summary>
    public Answer<LimeOutlook> Outlook => LimeParts.Outlook(plan, Order, Expected, expectedOn);

    /// <summary>Gets sulfur to lower the pH where it lies above the target, by the two tables known; not needed elsewhere, open
    /// where the texture is not known.</summary>
    public Answer<SulfurNeed> Sulfur => LimeParts.Sulfur(plan, TargetPh);

    /// <summary>Gets what the figures on lime rest on: the target, and the rate that was used.</summary>
    public ImmutableArray<IWorkedResult> RestsOn => [Target, Printed is { } printed ? printed : Computed];

    /// <summary>Gets what is to be remarked on offers and dates.</summary>
    public ImmutableArray<Finding> Findings =>
        [
            .. LimeRemarks.Findings(
                plan,
                Rate.OrNull(),
                Offers,
                Expected is null ? HoldBack : [],
                WeaklyBuffered is null ? null : Need
            ),
        ];

    /// <summary>What the lime will have done by planting day; null while the day is open, or without an order.</summary>
    internal LimeOutlook? Expected { get; }

    /// <summary>What stands open here; the rate's questions come first.</summary>
    internal IEnumerable<OpenQuestion> Questions =>
        Rate.State == AnswerState.Open
            ? [.. Rate.Questions, .. Sulfur.Questions]
            : [.. Order.Questions, .. Outlook.Questions, .. Sulfur.Questions];

    /// <summary>The results that no section of the sheet tells.</summary>
    internal IEnumerable<IWorkedResult?> WithoutSection => [Trigger, Sulfur.OrNull()];

    /// <summary>The target and the rate.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"lime to pH {Amounts.Print(TargetPh, 2)}, {Rate}";
}
