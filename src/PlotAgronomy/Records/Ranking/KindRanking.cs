using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>Kinds and blends over plots and years, best first by what is to be expected of them.</summary>
/// <remarks>A kind that did well once is not put before one that did well often: own means are drawn toward the mean of all.
/// Weather and soil are not told apart from the kind.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class KindRanking : IWorkedResult
{
    private readonly Shrinkage? all;

    private KindRanking(RankedMeasure measure, ImmutableArray<Observation> observations)
    {
        Measure = measure;
        var groups = observations.GroupBy(o => o.Name).OrderBy(g => g.Key, StringComparer.Ordinal).ToList();
        if (groups.Count > 0)
        {
            var shrinkage = new Shrinkage([.. groups.Select(g => g.Select(o => o.Value).ToImmutableArray())]);
            all = shrinkage;
            Kinds = [.. groups.Select(g => RankedKind.Of(g, shrinkage)).OrderByDescending(k => k.Shrunk)];
        }
    }

    /// <summary>Gets by what they are ranked.</summary>
    public RankedMeasure Measure { get; }

    /// <summary>Gets kinds and blends, best first.</summary>
    public ImmutableArray<RankedKind> Kinds { get; } = [];

    /// <summary>Gets the mean over all of them, as a part of one; null where nothing was seen.</summary>
    public double? MeanOfAll => all?.MeanOfAll;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. Kinds.Length > 1 && all!.Between <= 0
                ? [FindingCatalog.Create(RecordCodes.RankingAlike, ("count", Amounts.Print(Kinds.Length, 0)))]
                : Array.Empty<Finding>(),
            .. Kinds
                .Where(k => k.Observations < RecordConstants.All["fewest-observations"])
                .Select(k =>
                    FindingCatalog.Create(RecordCodes.RankingFew, ("kind", k.Name), ("count", Amounts.Print(k.Observations, 0)))
                ),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => RecordConstants.All.Find("usual-spread").Origin.Sources;

    /// <summary>Ranks what the book tells of.</summary>
    /// <param name="book">Book.</param>
    /// <param name="measure">By what.</param>
    /// <returns>The ranking; empty where nothing of the sort was seen.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No measure.</exception>
    public static KindRanking Of(PlotBook book, RankedMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new(Guard.Defined(measure), Observation.Of(book, measure));
    }

    /// <summary>The ranking by what was seen up to a day.</summary>
    internal static KindRanking UpTo(PlotBook book, RankedMeasure measure, DateOnly on) =>
        new(measure, [.. Observation.Of(book, measure).Where(o => o.On <= on)]);

    /// <summary>What came up of the kinds of one plot, stands that failed left out.</summary>
    internal static KindRanking OfPlot(PlotBook book, string plot) =>
        new(RankedMeasure.Emergence, Observation.EmergenceOn(book, plot));

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Kinds.SelectMany(Lines)];

    /// <inheritdoc/>
    public override string ToString() => string.Join("; ", Kinds);

    private IEnumerable<WorkedLine> Lines(RankedKind kind)
    {
        double weight = all!.Weight(kind.Observations);
        yield return RecordFormulas
            .All["record-shrink-weight"]
            .Line(
                Amounts.Print(weight, 3),
                ("kind", kind.Name),
                ("between", Amounts.Print(all.Between, 4)),
                ("within", Amounts.Print(all.WithinVariance, 4)),
                ("count", Amounts.Print(kind.Observations, 0))
            );
        yield return RecordFormulas
            .All["record-shrunk"]
            .Line(
                Amounts.Print(kind.Shrunk, 3),
                ("kind", kind.Name),
                ("mean of all", Amounts.Print(all.MeanOfAll, 3)),
                ("weight", Amounts.Print(weight, 3)),
                ("own mean", Amounts.Print(kind.Mean, 3))
            );
        if (kind.MoreToTell is not null)
        {
            yield return RecordFormulas
                .All["record-more-to-tell"]
                .Line(
                    Amounts.Print(
                        RecordMath.ObservationsToTell(RecordConstants.All["z-95"], kind.Mean, all.MeanOfAll, all.WithinVariance),
                        1
                    ),
                    ("kind", kind.Name),
                    ("z", Amounts.Print(RecordConstants.All["z-95"], 2)),
                    ("own mean", Amounts.Print(kind.Mean, 3)),
                    ("mean of all", Amounts.Print(all.MeanOfAll, 3)),
                    ("within", Amounts.Print(all.WithinVariance, 4))
                );
        }
    }
}
