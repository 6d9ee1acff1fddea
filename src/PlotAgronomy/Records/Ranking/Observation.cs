using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>One observation of a kind or blend.</summary>
/// <param name="Name">Name of the kind or blend.</param>
/// <param name="Kind">The kind; null for a blend.</param>
/// <param name="Plot">Plot.</param>
/// <param name="Year">Year.</param>
/// <param name="Value">What was seen, as a part of one.</param>
internal sealed record Observation(string Name, CropKind? Kind, string Plot, int Year, double Value)
{
    internal static ImmutableArray<Observation> Of(PlotBook book, RankedMeasure measure) =>
        measure == RankedMeasure.Emergence ? Emergence(book) : Browse(book);

    private static ImmutableArray<Observation> Emergence(PlotBook book) =>
        [
            .. from plot in book.Plots
            from answer in StandOutcome.All(book, plot)
            where answer.TryGet(out _)
            let stand = answer.Value
            where stand.IsOnTime && (stand.Count.Kind is not null || stand.Sowings[^1].Blend is not null)
            select new Observation(stand.Name, stand.Count.Kind, plot, stand.Count.On.Year, stand.Emergence),
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
                    b.On.Year,
                    BrowseMath.Use(BrowseMath.Pooled([b])) / 100
                )),
        ];
}
