using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>What the reports of one plot say over the years of one reading: only of the same laboratory, extractant, unit and
/// depth.</summary>
/// <remarks>The slope is that of Theil and Sen, the median of the slopes of all pairs on their real dates. Whether there is a
/// trend at all is the test of Mann and Kendall, exact for short series.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ReadingTrend : IWorkedResult
{
    private readonly ReadingSeries series;
    private readonly double[] values;
    private readonly double[] years;
    private readonly int[] ties;
    private readonly ImmutableArray<string> others;
    private readonly int leftOut;

    private ReadingTrend(
        string plot,
        ReadingSeries series,
        ImmutableArray<TrendPoint> points,
        ImmutableArray<string> others,
        int leftOut
    )
    {
        Plot = plot;
        this.series = series;
        this.others = others;
        this.leftOut = leftOut;
        Points = points;
        values = [.. points.Select(p => p.Value)];
        years = [.. points.Select(p => p.On.DayNumber / ExactUnits.DaysPerYear)];
        ties = [.. values.CountBy(v => v).Select(c => c.Value)];
    }

    /// <summary>Gets the name of the plot.</summary>
    public string Plot { get; }

    /// <summary>Gets what was measured, such as <c>water pH</c> or <c>phosphorus</c>.</summary>
    public string What => series.What;

    /// <summary>Gets the name of the laboratory.</summary>
    public string Laboratory => series.Laboratory;

    /// <summary>Gets the readings, one a day, by date.</summary>
    public ImmutableArray<TrendPoint> Points { get; }

    /// <summary>Gets the change in a year; null with one reading.</summary>
    public double? ChangePerYear => values.Length > 1 ? RankCorrelation.Median(RankCorrelation.Slopes(years, values)) : null;

    /// <summary>Gets the rising pairs less the falling ones.</summary>
    public int Score => RankCorrelation.Score(values);

    /// <summary>Gets a value indicating whether the chance is counted out over all orders of the readings; else it is that of the
    /// normal curve.</summary>
    public bool IsExact => values.Length <= RecordConstants.All["exact-trend-years"];

    /// <summary>Gets the chance of a score so far from zero, up or down, on ground that does not change.</summary>
    public double ChanceWithoutTrend => Math.Min(1, 2 * UpperTail(Math.Abs(Score)));

    /// <summary>Gets the least that <see cref="ChanceWithoutTrend"/> can be with so many readings.</summary>
    public double LeastChance => Math.Min(1, 2 / Enumerable.Range(1, values.Length).Aggregate(1.0, (orders, k) => orders * k));

    /// <summary>Gets a value indicating whether there is a trend: the chance of it without one is at most 5 %.</summary>
    public bool IsTrend => ChanceWithoutTrend <= RecordConstants.All["trend-chance"];

    /// <summary>Gets the least change between two readings that is more than the noise of sampling and analysis, at the level of
    /// the first reading; null where no publication tells the noise.</summary>
    public double? LeastRealChange =>
        series.Noise switch
        {
            ReadingNoise.Ph => LeastReal("noise-ph"),
            ReadingNoise.Nutrient => LeastReal("noise-nutrient") / 100 * values[0],
            _ => null,
        };

    /// <summary>Gets a value indicating whether the last reading differs from the first by more than noise; null where that
    /// cannot be told.</summary>
    public bool? IsRealChange =>
        values.Length > 1 && LeastRealChange is { } least ? Math.Abs(values[^1] - values[0]) > least : null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var remarks = new List<Finding>();
            if (!others.IsEmpty)
            {
                remarks.Add(
                    FindingCatalog.Create(
                        RecordCodes.SeriesApart,
                        ("series", series.InWords),
                        ("others", string.Join("; ", others))
                    )
                );
            }

            if (LeastChance > RecordConstants.All["trend-chance"])
            {
                remarks.Add(
                    FindingCatalog.Create(
                        RecordCodes.TrendShort,
                        ("series", series.InWords),
                        ("count", Amounts.PrintCount(values.Length, "reading")),
                        ("chance", Amounts.Print(LeastChance, 3))
                    )
                );
            }

            if (IsRealChange == false)
            {
                remarks.Add(
                    FindingCatalog.Create(
                        RecordCodes.ChangeIsNoise,
                        ("series", series.InWords),
                        ("change", Amounts.Print(values[^1] - values[0], 2)),
                        ("least", Amounts.Print(LeastRealChange!.Value, 2))
                    )
                );
            }

            if (leftOut > 0)
            {
                remarks.Add(
                    FindingCatalog.Create(RecordCodes.LessThanLeftOut, ("reading", What), ("count", Amounts.Print(leftOut, 0)))
                );
            }

            if (Points.FirstOrDefault(p => p.Readings > 1) is { } several)
            {
                remarks.Add(
                    FindingCatalog.Create(
                        RecordCodes.MedianOfDay,
                        ("series", series.InWords),
                        ("date", FieldWriter.Of(several.On)),
                        ("count", Amounts.Print(several.Readings, 0))
                    )
                );
            }

            return Finding.InOrder(remarks);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. RecordFormulas
                .All.SourcesOf("record-trend-score", "record-trend-slope")
                .Concat(series.Noise == ReadingNoise.Unknown ? [] : RecordConstants.All.Find("noise-ph").Origin.Sources)
                .Distinct(),
        ];

    private double Tied => ties.Sum(t => RankCorrelation.WeightedCount(t));

    private double Variance => RankCorrelation.Variance(values.Length, Tied);

    /// <summary>The trends of a plot, one for each reading that is comparable.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <returns>The trends, in the order of what was measured.</returns>
    /// <exception cref="ArgumentException">A blank name.</exception>
    public static ImmutableArray<ReadingTrend> All(PlotBook book, string plot)
    {
        ArgumentNullException.ThrowIfNull(book);
        var reports = book.Of<SoilReportEntry>(Guard.NotBlank(plot)).ToList();
        var bySeries = reports
            .SelectMany(e => ReadingSeries.Of(e.Report).Select(r => (e.On, r.Series, r.Value)))
            .ToLookup(r => r.Series, r => (r.On, r.Value));
        var apart = bySeries.ToLookup(s => s.Key.What, s => s.Key.InWords);
        return
        [
            .. bySeries
                .OrderBy(s => s.Key.InWords, StringComparer.Ordinal)
                .Select(s => new ReadingTrend(
                    plot,
                    s.Key,
                    [.. s.GroupBy(r => r.On).OrderBy(d => d.Key).Select(d => AtDay(d.Key, [.. d.Select(r => r.Value).Order()]))],
                    [.. apart[s.Key.What].Where(w => w != s.Key.InWords).Order(StringComparer.Ordinal)],
                    reports.Sum(e => e.Report.Readings.Count(r => r.IsUpperLimit && Soil.SoilWords.For(r.Analyte) == s.Key.What))
                )),
        ];
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        if (values.Length < 2)
        {
            return [];
        }

        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        double[] slopes = RankCorrelation.Slopes(years, values);
        lines.Add(
            RecordFormulas
                .All["record-trend-slope"]
                .Line(
                    Amounts.Print(RankCorrelation.Slope(values[0], values[^1], years[0], years[^1]), 4),
                    ("pair", "first and last reading"),
                    ("later", Amounts.Print(values[^1], 2)),
                    ("earlier", Amounts.Print(values[0], 2)),
                    ("years", Amounts.Print(years[^1] - years[0], 2))
                )
        );
        lines.Add(RecordFormulas.All["record-trend-median"].Line(Amounts.Print(RankCorrelation.Median(slopes), 4)));
        lines.Add(RecordFormulas.All["record-trend-score"].Line(Amounts.Print(Score, 0)));
        if (!IsExact)
        {
            lines.Add(
                RecordFormulas
                    .All["record-trend-variance"]
                    .Line(
                        Amounts.Print(Variance, 3),
                        ("readings", Amounts.Print(values.Length, 0)),
                        ("ties", Amounts.Print(Tied, 0))
                    )
            );
        }

        if (series.Noise != ReadingNoise.Unknown)
        {
            var noise = RecordConstants.All.Find(series.Noise == ReadingNoise.Ph ? "noise-ph" : "noise-nutrient");
            lines.Add(
                RecordFormulas
                    .All["record-least-real-change"]
                    .Line(
                        $"{Amounts.Print(LeastReal(noise.Id), 2)} {noise.Unit}",
                        ("z", Amounts.Print(RecordConstants.All["z-95"], 2)),
                        ("noise", Amounts.Print(noise.Value, 2))
                    )
                    .From(noise.Origin)
            );
        }

        return lines.ToImmutable();
    }

    /// <inheritdoc/>
    public override string ToString() =>
        ChangePerYear is { } change
            ? $"{series.InWords}: {Amounts.Print(change, 3)} a year over {Amounts.Print(values.Length, 0)} readings"
            : $"{series.InWords}: one reading";

    /// <summary>The least real change of two readings, in the unit of the noise.</summary>
    internal static double LeastReal(string noise) =>
        RecordMath.LeastRealChange(RecordConstants.All["z-95"], RecordConstants.All[noise]);

    private static TrendPoint AtDay(DateOnly on, double[] ordered) =>
        TrendPoint.At(on, RankCorrelation.Median(ordered), ordered.Length);

    private double UpperTail(int score) =>
        IsExact
            ? RankCorrelation.ExactUpperTail(score, values.Length, ties)
            : RankCorrelation.UpperTail(RankCorrelation.Z(score, Variance));
}
