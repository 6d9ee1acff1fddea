using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>What deer ate on a plot, by kind and month.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BrowseByMonth : IWorkedResult
{
    private readonly ImmutableArray<BrowseEntry> browse;
    private readonly ImmutableArray<CameraEntry> cameras;

    private BrowseByMonth(string plot, ImmutableArray<BrowseEntry> browse, ImmutableArray<CameraEntry> cameras)
    {
        Plot = plot;
        this.browse = browse;
        this.cameras = cameras;
        Months =
        [
            .. browse
                .GroupBy(b => (b.On.Year, b.On.Month, Kind: b.Kind?.Id ?? ""))
                .OrderBy(g => (g.Key.Year, g.Key.Month))
                .ThenBy(g => g.Key.Kind, StringComparer.Ordinal)
                .Select(g => BrowsedMonth.Of(g.Key.Year, g.Key.Month, g.First().Kind, g)),
        ];
    }

    /// <summary>Gets the name of the plot.</summary>
    public string Plot { get; }

    /// <summary>Gets use by month and kind, in order.</summary>
    public ImmutableArray<BrowsedMonth> Months { get; }

    /// <summary>Gets the months, from 1, in which browse was looked for and next to none was found, over all years and
    /// kinds.</summary>
    public ImmutableArray<int> MonthsThatFedNothing =>
        [
            .. browse
                .GroupBy(b => b.On.Month)
                .Where(g => BrowseMath.Use(BrowseMath.Pooled(g)) < RecordConstants.All["fed-nothing"])
                .Select(g => g.Key)
                .Order(),
        ];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        [
            .. Months
                .Where(m => m.Plants < RecordConstants.All["fewest-browsed-plants"])
                .Select(m =>
                    FindingCatalog.Create(
                        RecordCodes.FewPlants,
                        ("kind", m.Kind?.ShortName ?? "plot"),
                        ("month", m.MonthText),
                        ("count", Amounts.Print(m.Plants, 0))
                    )
                ),
        ];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => RecordConstants.All.Find("browse-class-1").Origin.Sources;

    /// <summary>What deer ate on a plot.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <returns>Use by month; empty where no browse is in the book.</returns>
    /// <exception cref="ArgumentException">A blank name.</exception>
    public static BrowseByMonth Of(PlotBook book, string plot)
    {
        ArgumentNullException.ThrowIfNull(book);
        Guard.NotBlank(plot);
        return new(plot, [.. book.Of<BrowseEntry>(plot)], [.. book.Of<CameraEntry>(plot)]);
    }

    /// <summary>Pictures with deer a day, over the entries of a month of all years.</summary>
    /// <param name="month">Month, from 1 to 12.</param>
    /// <returns>Pictures a day; null where no camera stood.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No month.</exception>
    public double? PicturesPerDay(int month)
    {
        Guard.Between(month, 1, 12, "(a month)");
        var stood = cameras.Where(c => c.On.Month == month).ToList();
        return stood.Count > 0 ? RecordMath.PerDay(stood.Sum(c => c.Images), stood.Sum(c => c.Days)) : null;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Months.Select(m => m.Line()),
            .. cameras
                .GroupBy(c => c.On.Month)
                .OrderBy(g => g.Key)
                .Select(g =>
                    RecordFormulas
                        .All["record-pictures"]
                        .Line(
                            Amounts.Print(PicturesPerDay(g.Key)!.Value, 1),
                            ("month", Amounts.Print(g.Key, 0)),
                            ("pictures", Amounts.Print(g.Sum(c => c.Images), 0)),
                            ("days", Amounts.Print(g.Sum(c => c.Days), 0))
                        )
                ),
        ];

    /// <inheritdoc/>
    public override string ToString() => $"{Plot}: {string.Join("; ", Months)}";
}
