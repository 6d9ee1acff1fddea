using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

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

    /// <summary>Gets the pH that the kinds ask for; null without kinds.</summary>
    public required LimeTarget? Target { get; init; }

    /// <summary>Gets the pH that is aimed at: the one the plan states, else of those the method has the one closest to what the
    /// kinds ask for; null where nobody says.</summary>
    public required double? TargetPh { get; init; }

    /// <summary>Gets why that pH is aimed at, in words.</summary>
    public string TargetReason => LimeRemarks.TargetReason(plan, Target, TargetPh);

    /// <summary>Gets the pH at or below which the method's institution starts to lime for that target; the target itself where
    /// it prints no margin; null without a target or a method.</summary>
    public LimeTrigger? Trigger =>
        TargetPh is { } ph && plan.LimeMethod is { } method ? LimeTrigger.Below(ph, method.NoLimeWithinPh ?? 0) : null;

    /// <summary>Gets the laboratory's own printed rate, which is used first; null when nothing was printed.</summary>
    public PrintedLimeRate? Printed { get; init; }

    /// <summary>Gets the printed rate held against our own sum for the same pH; null when nothing was printed.</summary>
    public PrintedLimeCheck? Check { get; init; }

    /// <summary>Gets our own sum, beside the printed rate or alone; null without a method.</summary>
    public required LimeNeed? Computed { get; init; }

    /// <summary>Gets the range that a strip or a meter leaves, where no laboratory's pH is known; else null. Nothing is ordered
    /// by it.</summary>
    public LimeByHomePh? ByHomePh { get; init; }

    /// <summary>The least and the most that the orders under each case bring; null where there are none that differ.</summary>
    internal (AnswerCase<LimeOrder> Low, AnswerCase<LimeOrder> High)? OrderRange =>
        Order.Cases is { Length: > 1 } cases
        && (cases.MinBy(c => c.Value.Product.Pounds)!, cases.MaxBy(c => c.Value.Product.Pounds)!) is var (low, high)
        && low.Value.Product.Pounds is var least
        && high.Value.Product.Pounds is var most
        && !Tolerance.AreEqual(least, most)
            ? (low, high)
            : null;

    /// <summary>The cases in which no order can be made of what is on offer.</summary>
    internal ImmutableArray<string> CasesWithoutOrder =>
        [.. Cases().Select(c => c.Assumption).Except(Order.Cases.Select(c => c.Assumption))];

    /// <summary>What the range of an own reading comes to on the plot; null without one.</summary>
    internal (Mass Low, Mass High)? HomeRange =>
        ByHomePh is { } range ? (range.Low.Over(plan.Plot.Area), range.High.Over(plan.Plot.Area)) : null;

    /// <summary>The kinds that the soil is too sour for at the highest pH an own reading may stand for, and those of which that
    /// reading cannot tell; null where a laboratory's pH is known, or no own one.</summary>
    internal (ImmutableArray<CropKind> TooSour, ImmutableArray<CropKind> Unsure)? HomeKinds
    {
        get
        {
            if (plan is not { HomePh: { } read, Soil: { WaterPh: null } soil })
            {
                return null;
            }

            ImmutableArray<CropKind> atHigh = HeldBack.Of(plan.Kinds.Select(k => k.Kind), soil with { WaterPh = read.High });
            ImmutableArray<CropKind> atLow = HeldBack.Of(plan.Kinds.Select(k => k.Kind), soil with { WaterPh = read.Low });
            return (atHigh, [.. atLow.Except(atHigh)]);
        }
    }

    /// <summary>Gets the whole need, printed or by the method, of which <see cref="Rate"/> is what goes on now; null where there
    /// is
    /// none.</summary>
    internal LimeRate? Need { get; init; }

    /// <summary>Gets the kinds that today's soil is too sour for, whether or not lime is on offer: they wait for a new
    /// test.</summary>
    public ImmutableArray<CropKind> HoldBack => HeldBack.Of(plan.Kinds.Select(k => k.Kind), plan.Soil);

    /// <summary>Where the lime goes.</summary>
    internal LimePlacement Placement => LimePlacing.Of(plan);

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
    public Answer<LimeOrder> Order => LimeParts.Order(Rate, Offers, OrdersOfCases);

    /// <summary>What a printed rate leaves open, or what stands before a rate.</summary>
    internal ImmutableArray<OpenQuestion> Missing { get; init; } = [];

    /// <summary>The answer under each plausible value of what is missing.</summary>
    internal Func<ImmutableArray<AnswerCase<LimeAnswer>>> Cases { get; init; } = () => [];

    /// <summary>Gets what the lime will have done by planting day; open where the day of liming is not known.</summary>
    public Answer<LimeOutlook> Outlook => LimeParts.Outlook(plan, Order, Expected, Missing, expectedOn);

    /// <summary>Gets sulfur to lower the pH where it lies above the target, by the two tables known; not needed elsewhere, open
    /// where the texture is not known.</summary>
    public Answer<SulfurNeed> Sulfur => LimeParts.Sulfur(plan, TargetPh);

    /// <summary>Gets what the figures on lime rest on: the target, and the rate that was used.</summary>
    public ImmutableArray<IWorkedResult> RestsOn =>
        [.. new IWorkedResult?[] { Target, Printed is { } printed ? printed : Computed }.OfType<IWorkedResult>()];

    /// <summary>Gets what is to be remarked on offers and dates.</summary>
    public ImmutableArray<Finding> Findings =>
        [
            .. LimeRemarks.Findings(
                plan,
                Rate.OrNull(),
                Offers,
                Expected is null ? HoldBack : [],
                WeaklyBuffered is null ? null : Need,
                Need
            ),
        ];

    /// <summary>What the lime will have done by planting day; null while the day is open, or without an order.</summary>
    internal LimeOutlook? Expected { get; }

    /// <summary>What stands open here; the rate's questions come first.</summary>
    internal IEnumerable<OpenQuestion> Questions =>
        Rate.State == AnswerState.Open
            ? [.. Rate.Questions, .. Sulfur.Questions]
            : [.. Missing, .. Order.Questions, .. Outlook.Questions, .. Sulfur.Questions];

    /// <summary>The results that no section of the sheet tells.</summary>
    internal IEnumerable<IWorkedResult?> WithoutSection => [Trigger, ByHomePh, Sulfur.OrNull()];

    /// <summary>The order under each case, where one can be made.</summary>
    private ImmutableArray<AnswerCase<LimeOrder>> OrdersOfCases() =>
        [.. from one in Cases() let order = one.Value.Order.OrNull() where order is not null select one.Holding(order)];

    /// <summary>The target and the rate.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string aimed = TargetPh is { } ph ? $" to pH {Amounts.Print(ph, 2)}" : "";
        return $"lime{aimed}, {Rate}";
    }
}
