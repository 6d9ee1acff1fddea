using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What the book tells of one plot up to a day: what was done, what is owed, how the soil changed, what grew, what was
/// eaten, what to change.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotHistory : IWorkedResult
{
    private PlotHistory(PlotBook book, string plot, Area area, DateOnly on, Func<StandOutcome, StandRemedy?> remedy)
    {
        Plot = plot;
        On = on;
        Done = [.. book.Of<BookEntry>(plot).Where(e => e.On <= on)];
        Owed = PlotOwed.Of(book, plot, area, on);
        Trends = [.. ReadingTrend.All(book, plot).Where(t => t.Points.Length > 1)];
        Response = PhResponse.Of(book, plot, area, on);
        Stands = [.. StandOutcome.All(book, plot).Select(s => s.OrNull()).OfType<StandOutcome>().Where(s => s.Count.On <= on)];
        Remedies = [.. Stands.Select(remedy).OfType<StandRemedy>()];
        Cages = [.. Done.OfType<ClippingEntry>().Select(CageOutcome.Of)];
        Browse = BrowseByMonth.Of(book, plot);
        Next = NextYear.Of(book, plot, area, on);
        Ranking = KindRanking.UpTo(book, RankedMeasure.Emergence, on);
        Eaten = KindRanking.UpTo(book, RankedMeasure.Browse, on);
        Remarks = book.Findings;
    }

    /// <summary>Gets the name of the plot.</summary>
    public string Plot { get; }

    /// <summary>Gets the day up to which it is told.</summary>
    public DateOnly On { get; }

    /// <summary>Gets the area it is told for.</summary>
    public Area Area => Owed.Area;

    /// <summary>Gets the entries that hold, by date.</summary>
    public ImmutableArray<BookEntry> Done { get; }

    /// <summary>Gets what the plot is owed.</summary>
    public PlotOwed Owed { get; }

    /// <summary>Gets how each reading of the soil changed, where there are two or more that can be compared.</summary>
    public ImmutableArray<ReadingTrend> Trends { get; }

    /// <summary>Gets whether lime did what it promised; open where the book does not tell.</summary>
    public Answer<PhResponse> Response { get; }

    /// <summary>Gets what came up, one for each count.</summary>
    public ImmutableArray<StandOutcome> Stands { get; }

    /// <summary>What may still be sown where a stand is thin or failed; none where no plan tells place and ground.</summary>
    internal ImmutableArray<StandRemedy> Remedies { get; }

    /// <summary>Gets what grew in cages and was eaten beside them.</summary>
    public ImmutableArray<CageOutcome> Cages { get; }

    /// <summary>Gets what was eaten, by kind and month.</summary>
    public BrowseByMonth Browse { get; }

    /// <summary>Gets what it suggests for the next year.</summary>
    public NextYear Next { get; }

    /// <summary>Kinds and blends of the whole book by what comes up.</summary>
    internal KindRanking Ranking { get; }

    /// <summary>Kinds of the whole book by what deer eat of them.</summary>
    internal KindRanking Eaten { get; }

    /// <summary>Gets what is asked for beyond what is owed, and lime that is still at work.</summary>
    public ImmutableArray<Finding> Advice
    {
        get
        {
            var owed = Owed.Findings.Where(f => f.Code != RecordCodes.LimeAtWork).ToHashSet();
            return [.. Next.Findings.Where(f => !owed.Contains(f))];
        }
    }

    /// <summary>Gets what is to be remarked on the book itself: torn lines, and corrections that meet nothing.</summary>
    public ImmutableArray<Finding> Remarks { get; }

    /// <summary>The first and the last year in which work was done; null where none was.</summary>
    internal (int First, int Last)? Worked => Work.IsEmpty ? null : (Work[0].On.Year, Work[^1].On.Year);

    /// <summary>How often each sort of work was done.</summary>
    internal ImmutableArray<(string Sort, int Count)> WorkBySort =>
        [.. Work.GroupBy(EntryWords.Sort).Select(g => (g.Key, g.Count()))];

    /// <summary>Every entry in a few words.</summary>
    internal ImmutableArray<(string Name, DateOnly On, string Words)> Lines =>
        [.. Done.Select(e => (e.Id!, e.On, EntryWords.Of(e)))];

    private ImmutableArray<BookEntry> Work => [.. Done.Where(e => e is LimeEntry or FertilizerEntry or SowingEntry)];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder([.. Remarks.Concat(Next.Findings).Distinct()]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Next.Sources.Concat(Trends.SelectMany(t => t.Sources)).Concat(Stands.SelectMany(s => s.Sources)).Distinct()];

    /// <summary>What the book tells of a plot.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <param name="area">Area of the plot; null takes that of its latest sowing.</param>
    /// <param name="on">Day up to which it is told.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentException">A plot of which the book has nothing, or no area.</exception>
    public static PlotHistory Of(PlotBook book, string plot, Area? area, DateOnly on) => Of(book, plot, area, on, _ => null);

    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <param name="area">Area of the plot; null takes that of its latest sowing.</param>
    /// <param name="on">Day up to which it is told.</param>
    /// <param name="remedy">What may still be sown into a stand; null where nothing is wanted.</param>
    internal static PlotHistory Of(PlotBook book, string plot, Area? area, DateOnly on, Func<StandOutcome, StandRemedy?> remedy)
    {
        ArgumentNullException.ThrowIfNull(book);
        Guard.NotBlank(plot);
        if (!book.Plots.Contains(plot))
        {
            throw new ArgumentException($"The book has no plot '{plot}'; it has {string.Join(", ", book.Plots)}.", nameof(plot));
        }

        var known = area ?? book.Of<SowingEntry>(plot).LastOrDefault(s => s.On <= on)?.Area;
        return known is { } ground
            ? new(book, plot, ground, on, remedy)
            : throw new ArgumentException($"No sowing of '{plot}' tells its area: name a plan of it.", nameof(area));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Next.ShowWork(),
            .. Trends.SelectMany(t => t.ShowWork()),
            .. Stands.SelectMany(s => s.ShowWork()),
            .. Cages.SelectMany(c => c.ShowWork()),
        ];

    /// <summary>The plot and how much is told of it.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Plot}: {Amounts.Print(Done.Length, 0)} entries";
}
