using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>One observation of a kind or blend.</summary>
/// <param name="Name">Name of the kind or blend.</param>
/// <param name="Kind">The kind; null for a blend.</param>
/// <param name="Plot">Plot.</param>
/// <param name="On">Day it was seen.</param>
/// <param name="Value">What was seen, as a part of one.</param>
internal sealed record Observation(string Name, CropKind? Kind, string Plot, DateOnly On, double Value)
{
    internal static ImmutableArray<Observation> Of(PlotBook book, RankedMeasure measure) =>
        measure == RankedMeasure.Emergence ? Emergence(book) : Browse(book);

    /// <summary>What came up on one plot, stands that failed left out: more seed does not mend what killed them.</summary>
    internal static ImmutableArray<Observation> EmergenceOn(PlotBook book, string plot) =>
        Emergence(book, [plot], s => s.Verdict != StandVerdict.Failed);

    private static ImmutableArray<Observation> Emergence(PlotBook book) => Emergence(book, book.Plots, _ => true);

    private static ImmutableArray<Observation> Emergence(
        PlotBook book,
        ImmutableArray<string> plots,
        Func<StandOutcome, bool> counts
    ) =>
        [
            .. from plot in plots
            from answer in StandOutcome.All(book, plot)
            where answer.TryGet(out _)
            let stand = answer.Value
            where counts(stand) && stand.IsOnTime && (stand.Count.Kind is not null || stand.Sowings[^1].Blend is not null)
            select new Observation(stand.Name, stand.Count.Kind, plot, stand.Count.On, stand.Emergence),
        ];

    private static ImmutableArray<Observation> Browse(PlotBook book) =>
        [
            .. book
                .Current.OfType<BrowseEntry>()
                .Where(b => b.Kind is not null)
                .Select(b => new Observation(
                    b.Kind!.ShortName,
                    b.Kind,
                    b.Plot,
                    b.On,
                    BrowseMath.Use(BrowseMath.Pooled([b])) / 100
                )),
        ];
}
