using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What came up of what was sown: plants in hoops against living seed.</summary>
/// <remarks>Living seed is that of the tags, by the weights really used. The range is that of the count alone; seeds a pound and
/// the tag are taken as they stand. Hard seed of earlier years and volunteers count as plants.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class StandOutcome : IWorkedResult
{
    private readonly ImmutableArray<(SownLot Lot, double Acres)> lots;
    private readonly double? rainBefore;
    private readonly double? rainAfter;

    private StandOutcome(CountEntry count, DateOnly sownOn, ImmutableArray<SowingEntry> sowings, IEnumerable<RainEntry> rain)
    {
        Count = count;
        SownOn = sownOn;
        Sowings = sowings;
        lots = LotsOf(count, sowings);
        var (low, high) = CountInterval.OfMean(count.Plants);
        PlantsPerSquareFoot = RecordMath.PerSquareFoot(count.Plants.Sum(n => (double)n), count.Plants.Length, count.SquareFeet);
        PlantsPerSquareFootLow = low / count.SquareFeet;
        PlantsPerSquareFootHigh = high / count.SquareFeet;
        LiveSeedsPerSquareFoot = lots.Sum(Live);
        rainBefore = Fallen(rain, sownOn.AddDays(-Days("rain-days-before")), sownOn);
        rainAfter = Fallen(rain, sownOn, sownOn.AddDays(Days("rain-days-after")));
    }

    /// <summary>Gets the count.</summary>
    public CountEntry Count { get; }

    /// <summary>Gets the day of sowing, the last where it was sown in several goes.</summary>
    public DateOnly SownOn { get; }

    /// <summary>Gets the sowings that made the stand.</summary>
    public ImmutableArray<SowingEntry> Sowings { get; }

    /// <summary>Gets the days from sowing to the count.</summary>
    public int DaysAfterSowing => Count.On.DayNumber - SownOn.DayNumber;

    /// <summary>Gets the plants in a square foot.</summary>
    public double PlantsPerSquareFoot { get; }

    /// <summary>Gets the low end of the plants in a square foot: the truth lies above with 97.5 %.</summary>
    public double PlantsPerSquareFootLow { get; }

    /// <summary>Gets the high end of the plants in a square foot: the truth lies below with 97.5 %.</summary>
    public double PlantsPerSquareFootHigh { get; }

    /// <summary>Gets the living seeds that were sown on a square foot.</summary>
    public double LiveSeedsPerSquareFoot { get; }

    /// <summary>Gets the plants for each living seed; above 1 where more stand than were sown.</summary>
    public double Emergence => RecordMath.Emerged(PlantsPerSquareFoot, LiveSeedsPerSquareFoot);

    /// <summary>Gets the low end of <see cref="Emergence"/>.</summary>
    public double EmergenceLow => RecordMath.Emerged(PlantsPerSquareFootLow, LiveSeedsPerSquareFoot);

    /// <summary>Gets the high end of <see cref="Emergence"/>.</summary>
    public double EmergenceHigh => RecordMath.Emerged(PlantsPerSquareFootHigh, LiveSeedsPerSquareFoot);

    /// <summary>Gets the rain of the 14 days before sowing by the gauge; null where none is in the book.</summary>
    public Length? RainBefore => rainBefore is { } inches ? Length.FromInches(inches) : null;

    /// <summary>Gets the rain of the 28 days after sowing by the gauge; null where none is in the book.</summary>
    public Length? RainAfter => rainAfter is { } inches ? Length.FromInches(inches) : null;

    /// <summary>Gets what the count says of the stand.</summary>
    public StandVerdict Verdict =>
        !IsOnTime ? StandVerdict.Unsure
        : EmergenceHigh < RecordConstants.All["stand-failed"] ? StandVerdict.Failed
        : EmergenceHigh < RecordConstants.All["stand-thin"] ? StandVerdict.Thin
        : EmergenceLow >= RecordConstants.All["stand-thin"] ? StandVerdict.Full
        : StandVerdict.Unsure;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var remarks = new List<Finding>();
            string emerged = Percent(Emergence);
            if (!IsOnTime)
            {
                remarks.Add(
                    FindingCatalog.Create(RecordCodes.CountOffTime, ("what", Name), ("days", Amounts.Print(DaysAfterSowing, 0)))
                );
            }

            if (Count.Plants.Length < RecordConstants.All["fewest-hoops"])
            {
                remarks.Add(
                    FindingCatalog.Create(RecordCodes.FewHoops, ("what", Name), ("count", Amounts.Print(Count.Plants.Length, 0)))
                );
            }

            if (Verdict is StandVerdict.Failed or StandVerdict.Thin)
            {
                remarks.Add(
                    FindingCatalog.Create(
                        Verdict == StandVerdict.Failed ? RecordCodes.StandFailed : RecordCodes.StandThin,
                        ("what", Name),
                        ("emerged", emerged),
                        ("high", Percent(EmergenceHigh))
                    )
                );
            }

            if (EmergenceLow > 1)
            {
                remarks.Add(FindingCatalog.Create(RecordCodes.MoreThanSown, ("what", Name), ("emerged", emerged)));
            }

            return Finding.InOrder(remarks);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. lots.Select(l => l.Lot.Lot.SeedCount!.Evidence)
                .SelectMany(o => o.Sources)
                .Concat(RecordConstants.All.Find("stand-thin").Origin.Sources)
                .Distinct(),
        ];

    internal string Name => Count.Kind?.ShortName ?? Sowings[^1].Blend ?? "everything sown";

    internal bool IsOnTime =>
        DaysAfterSowing >= RecordConstants.All["stand-days-low"] && DaysAfterSowing <= RecordConstants.All["stand-days-high"];

    /// <summary>The stands of a plot, one for each count.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <returns>The stands by date of the count; open where no sowing before the count is in the book, or the seeds a pound of a
    /// kind are not known.</returns>
    /// <exception cref="ArgumentException">A blank name.</exception>
    public static ImmutableArray<Answer<StandOutcome>> All(PlotBook book, string plot)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.Of<CountEntry>(Guard.NotBlank(plot)).Select(count => Of(book, count))];
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            RecordFormulas
                .All["record-plants"]
                .Line(
                    $"{Amounts.Print(PlantsPerSquareFoot, 2)} plants/ft2",
                    ("plants", Amounts.Print(Count.Plants.Sum(n => (double)n), 0)),
                    ("hoops", Amounts.Print(Count.Plants.Length, 0)),
                    ("hoop", Amounts.Print(Count.Hoop, "ft2", 2))
                ),
            .. lots.Select(l =>
                RecordFormulas
                    .All["record-live-seeds"]
                    .Line(
                        $"{Amounts.Print(Live(l), 2)} seeds/ft2",
                        ("kind", l.Lot.Lot.Kind.ShortName),
                        ("living", Amounts.Print(l.Lot.Living.Pounds, 2)),
                        ("seeds a lb", Amounts.Print(l.Lot.Lot.SeedCount!.SeedsPerPound, 0)),
                        ("area", Amounts.Print(l.Acres, 3)),
                        FormulaTable.SquareFeetPerAcre
                    )
            ),
            RecordFormulas
                .All["record-emerged"]
                .Line(
                    $"{Percent(Emergence)} ({Percent(EmergenceLow)} to {Percent(EmergenceHigh)})",
                    ("plants", Amounts.Print(PlantsPerSquareFoot, 2)),
                    ("seeds", Amounts.Print(LiveSeedsPerSquareFoot, 2))
                ),
        ];

    /// <inheritdoc/>
    public override string ToString() => $"{Name}: {Percent(Emergence)} of the living seed is up";

    internal static string Percent(double part) => $"{Amounts.Print(part * 100, 0)} %";

    private static Answer<StandOutcome> Of(PlotBook book, CountEntry count)
    {
        var before = book.Of<SowingEntry>(count.Plot)
            .Where(s =>
                s.On <= count.On && s.On.AddYears(1) > count.On && (count.Kind is null || s.Kinds.Any(k => k.Id == count.Kind.Id))
            )
            .ToList();
        if (before.Count == 0)
        {
            return Answers.Open<StandOutcome>(() => [RecordQuestions.WhatWasSown(count.Plot, count.On)]);
        }

        var last = before[^1].On;
        ImmutableArray<SowingEntry> sowings = [.. before.Where(s => s.On.AddDays(Days("one-stand-days")) >= last)];
        ImmutableArray<CropKind> uncounted =
        [
            .. LotsOf(count, sowings).Where(l => l.Lot.Lot.SeedCount is null).Select(l => l.Lot.Lot.Kind).DistinctBy(k => k.Id),
        ];
        if (!uncounted.IsEmpty)
        {
            return Answers.Open<StandOutcome>(() => [.. uncounted.Select(RecordQuestions.SeedCount)]);
        }

        var outcome = new StandOutcome(count, last, sowings, book.Of<RainEntry>(count.Plot));
        return outcome.LiveSeedsPerSquareFoot > 0
            ? Answers.Given(outcome, () => outcome.Findings)
            : Answers.Open<StandOutcome>(() => [RecordQuestions.WhatWasSown(count.Plot, count.On)]);
    }

    private static ImmutableArray<(SownLot Lot, double Acres)> LotsOf(CountEntry count, ImmutableArray<SowingEntry> sowings) =>
        [
            .. sowings
                .SelectMany(s => s.Lots.Select(l => (Lot: l, s.Acres)))
                .Where(l => count.Kind is null || l.Lot.Lot.Kind.Id == count.Kind.Id),
        ];

    private static double Live((SownLot Lot, double Acres) sown) =>
        RecordMath.LivePerSquareFoot(sown.Lot.Living.Pounds, sown.Lot.Lot.SeedCount!.SeedsPerPound, sown.Acres);

    /// <summary>Gauge readings on days after the first and up to the last; null where there is none.</summary>
    private static double? Fallen(IEnumerable<RainEntry> rain, DateOnly after, DateOnly upTo)
    {
        var fallen = rain.Where(r => r.On > after && r.On <= upTo).Select(r => r.Amount.Inches).ToList();
        return fallen.Count > 0 ? fallen.Sum() : null;
    }

    private static int Days(string id) => (int)RecordConstants.All[id];
}
