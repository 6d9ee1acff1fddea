using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What the book of a plot suggests for the next year, each with its reason.</summary>
/// <remarks>The suggestions are the findings: lime that is due or still at work, an old soil test, seed that comes up better or
/// worse than usual, a kind that failed twice, a month that fed nothing, a family that comes too often, old clover full of
/// grass.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class NextYear : IWorkedResult
{
    private readonly PlotBook book;
    private readonly SoilReportEntry? report;
    private readonly ImmutableArray<RankedKind> emerged;

    private NextYear(PlotBook book, string plot, Area area, DateOnly on, KindCatalog kinds)
    {
        this.book = book;
        Plot = plot;
        On = on;
        Kinds = kinds;
        Owed = PlotOwed.Of(book, plot, area, on);
        report = book.Of<SoilReportEntry>(plot).LastOrDefault(r => r.On <= on);
        var failed = PlotAdvice.FailedIds(book, plot, on);
        emerged =
        [
            .. KindRanking.OfPlot(book, plot).Kinds.Where(k => k.Kind is { } kind && !failed.Contains(kind.Id) && IsToTell(k)),
        ];
    }

    /// <summary>Gets the name of the plot.</summary>
    public string Plot { get; }

    /// <summary>Gets the date for which it is told.</summary>
    public DateOnly On { get; }

    /// <summary>Gets what the plot is owed.</summary>
    public PlotOwed Owed { get; }

    /// <summary>Gets what is not known: what the plot is owed, and a soil report where the book has none of this plot. No plot
    /// takes over the report of another.</summary>
    public ImmutableArray<OpenQuestion> Questions =>
        [.. report is null ? [RecordQuestions.Report(Plot)] : Array.Empty<OpenQuestion>(), .. Owed.Lime.Questions];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. report is null ? [] : SampleChecks.OfAge(report.Report with { SampledOn = report.On }, On),
            .. Owed.Findings,
            .. PhResponse.Of(book, Plot, Owed.Area, On).TryGet(out var response) ? response.Findings : [],
            .. Suggestions.Select(s => s.Why),
        ]);

    /// <summary>Gets what is asked for of the kinds that are sown.</summary>
    internal ImmutableArray<Suggestion> Suggestions =>
        [
            .. PlotAdvice.FailedTwice(book, Plot, On),
            .. PlotAdvice.FedNothing(book, Plot, Kinds),
            .. PlotAdvice.Rotation(book, Plot, On),
            .. OldClover.On(book, Plot, On),
            .. emerged.Select(Told),
        ];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Owed.Sources.Concat(RecordConstants.All.Find("usual-emergence").Origin.Sources).Distinct()];

    private KindCatalog Kinds { get; }

    private static double Usual => RecordConstants.All["usual-emergence"];

    private static double Most => RecordConstants.All["most-rate-factor"];

    /// <summary>What the book suggests for a plot.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <param name="area">Area of the plot.</param>
    /// <param name="on">Date; what is owed is told for this day.</param>
    /// <param name="kinds">Catalog of the kinds that may be named; null for the standard one.</param>
    /// <returns>The suggestions.</returns>
    /// <exception cref="ArgumentException">A blank name, or an area that is not above 0.</exception>
    public static NextYear Of(PlotBook book, string plot, Area area, DateOnly on, KindCatalog? kinds = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new(book, Guard.NotBlank(plot), Guard.Positive(area), on, kinds ?? KindCatalog.Standard);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Owed.ShowWork(),
            .. emerged.Select(k =>
                RecordFormulas
                    .All["record-rate-factor"]
                    .Line(
                        Amounts.Print(Factor(k), 2),
                        ("kind", k.Name),
                        ("usual", Amounts.Print(Usual, 2)),
                        ("own", Amounts.Print(k.Shrunk, 2)),
                        ("most", Amounts.Print(Most, 2))
                    )
            ),
        ];

    /// <inheritdoc/>
    public override string ToString() => $"{Plot}: {Amounts.PrintCount(Findings.Length, "suggestion")} for the next year";

    /// <summary>By how much more is sown where so much of the living seed comes up.</summary>
    internal static double FactorOf(double emergence) => RecordMath.RateFactor(Usual, emergence, Most);

    private static double Factor(RankedKind kind) => FactorOf(kind.Shrunk);

    /// <summary>Seen often enough, and far enough from what is usual.</summary>
    private static bool IsToTell(RankedKind kind) =>
        kind.Observations >= RecordConstants.All["fewest-for-factor"]
        && kind.Shrunk > 0
        && Math.Abs(Factor(kind) - 1) >= RecordConstants.All["factor-to-tell"];

    private Suggestion Told(RankedKind kind) =>
        new(
            FindingCatalog.Create(
                RecordCodes.OwnEmergence,
                ("kind", kind.Name),
                ("own", StandOutcome.Percent(kind.Shrunk)),
                ("count", Amounts.Print(kind.Observations, 0)),
                ("usual", StandOutcome.Percent(Usual)),
                ("factor", Amounts.Print(Factor(kind), 2))
            ),
            [.. book.Of<CountEntry>(Plot).Where(c => c.Kind?.Id == kind.Kind!.Id)],
            [kind.Kind!]
        )
        {
            Emergence = kind.Shrunk,
        };
}
