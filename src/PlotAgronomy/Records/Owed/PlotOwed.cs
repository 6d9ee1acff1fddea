using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What a plot is owed on a date: lime, nitrogen, phosphate and potash, needed, put down, still due and over.</summary>
/// <remarks>Counted from the date of the need that stands: the latest entry that states it. Lime is counted in the lime of its
/// rate. What was put down is what the loads weighed, over the whole plot. Removal by what was eaten is not considered: the next
/// soil test finds it.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotOwed : IWorkedResult
{
    private readonly double acres;
    private readonly NeedEntry? limeNeed;
    private readonly ImmutableArray<LimeEntry> limeSince;
    private readonly ImmutableArray<NutrientOwed> nutrients;
    private readonly ImmutableArray<FertilizerEntry> spread;

    private PlotOwed(PlotBook book, string plot, Area area, DateOnly on)
    {
        Plot = plot;
        Area = area;
        On = on;
        acres = area.Acres;
        limeNeed = book.Of<NeedEntry>(plot).LastOrDefault(n => n.Lime is not null && n.On <= on);
        ImmutableArray<LimeEntry> limed = [.. book.Of<LimeEntry>(plot).Where(l => l.On <= on)];
        limeSince = limeNeed is { } need ? [.. limed.Where(l => l.On >= need.On)] : [];
        LimeAtWork = [.. limed.Select(l => Records.LimeAtWork.Of(l, on)).OfType<LimeAtWork>()];
        nutrients = [.. NutrientOwed.Counted.Select(n => NutrientOwed.Of(book, plot, acres, on, n))];
        spread = [.. nutrients.SelectMany(n => n.Spread).Distinct()];
    }

    /// <summary>Gets the name of the plot.</summary>
    public string Plot { get; }

    /// <summary>Gets the area of the plot.</summary>
    public Area Area { get; }

    /// <summary>Gets the date for which it is told.</summary>
    public DateOnly On { get; }

    /// <summary>Gets the lime: needed, put down and still due, in the lime of the rate.</summary>
    /// <value>Open where no rate stands in the book, or a lime on the plot cannot be counted in that of the rate; then the part
    /// that is known leaves it out.</value>
    public Answer<LimeBalance> Lime =>
        limeNeed?.Lime is not { } rate ? Answers.Open<LimeBalance>(() => [RecordQuestions.LimeNeed(Plot)])
        : Uncounted(rate) is { IsEmpty: false } uncounted
            ? Answers.OpenButFor(
                Balance(rate),
                () => [.. uncounted.Select(l => RecordQuestions.LimeStrength(l.Material, rate.Basis)).Distinct()],
                findings: () => Balance(rate).Findings
            )
        : rate.IsNone ? Answers.NoneNeeded(Balance(rate), () => Balance(rate).Findings)
        : Answers.Given(Balance(rate), () => Balance(rate).Findings);

    /// <summary>Gets the lime that has not done all it will, whenever it was spread.</summary>
    public ImmutableArray<LimeAtWork> LimeAtWork { get; }

    /// <summary>Gets nitrogen, phosphate and potash where they were needed or spread: needed, put down, missing and
    /// over.</summary>
    public ImmutableArray<NutrientBalance> Nutrients =>
        [.. nutrients.Select(n => n.Balance).Where(b => b.IsAsked || b.Delivered > ApplicationRate.Zero)];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. Lime.Findings,
            .. Nutrients.Where(OverNeed.IsOver).Select(OverNeed.Told),
            .. limeSince.Select(l => SpreadWork.NotCovered(l.Material.Name, l.On, l.Loads, acres)).OfType<Finding>(),
            .. spread.Select(f => SpreadWork.NotCovered(f.Product.Name, f.On, f.Loads, acres)).OfType<Finding>(),
            .. LimeAtWork.Select(l => l.Told()),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. (limeNeed?.Lime?.Basis.Origin.Sources ?? []).Concat(LimeReaction.Sources).Distinct()];

    /// <summary>What a plot is owed on a date.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <param name="area">Area of the plot.</param>
    /// <param name="on">Date; what was entered for later days is not counted.</param>
    /// <returns>The balance.</returns>
    /// <exception cref="ArgumentException">A blank name, or an area that is not above 0.</exception>
    public static PlotOwed Of(PlotBook book, string plot, Area area, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new(book, Guard.NotBlank(plot), Guard.Positive(area), on);
    }

    /// <summary>The running balance: what the plot was owed on each day on which a need was stated or something spread.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <param name="area">Area of the plot.</param>
    /// <param name="upTo">Last day that is told.</param>
    /// <returns>The balances, by date.</returns>
    /// <exception cref="ArgumentException">A blank name, or an area that is not above 0.</exception>
    public static ImmutableArray<PlotOwed> Running(PlotBook book, string plot, Area area, DateOnly upTo)
    {
        ArgumentNullException.ThrowIfNull(book);
        Guard.NotBlank(plot);
        Guard.Positive(area);
        return
        [
            .. book.Of<BookEntry>(plot)
                .Where(e => (e is NeedEntry or LimeEntry or FertilizerEntry) && e.On <= upTo)
                .Select(e => e.On)
                .Distinct()
                .Select(day => Of(book, plot, area, day)),
        ];
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. limeSince.SelectMany(l => SpreadWork.Lines(l.Material.Name, l.Loads, acres)),
            .. spread.SelectMany(f => SpreadWork.Lines(f.Product.Name, f.Loads, acres)),
            .. nutrients.SelectMany(n => n.Lines()),
            .. Lime.TryGetPart(out var balance) ? balance.ShowWork() : [],
        ];

    /// <inheritdoc/>
    public override string ToString() => $"{Plot} on {FieldWriter.Of(On)}: {string.Join("; ", Nutrients)}";

    private LimeBalance Balance(LimeRate rate) =>
        LimeBalance.For(
            rate,
            Area,
            limeSince.Except(Uncounted(rate)).Select(l => LimeApplication.FromMass(l.Weight, l.Material, l.On))
        );

    private ImmutableArray<LimeEntry> Uncounted(LimeRate rate) =>
        [.. limeSince.Where(l => l.Material.Neutralizes && rate.WhyNotCounted(l.Material) is not null)];
}
