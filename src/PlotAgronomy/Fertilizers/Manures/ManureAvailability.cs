using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>What part of a manure's nutrients a crop gets, by situation. Publications differ: choose the row that fits.</summary>
public sealed class ManureAvailability
{
    private static readonly Table<ManureAvailability> Everything = new(
        "Fertilizers/Data/manure-availability.csv",
        r => new ManureAvailability(
            r.Text("id"),
            r.Text("situation"),
            r.Text("pool"),
            Fraction.FromPercent(r.Number("available_pct")),
            r.SourceId(),
            r.Status()
        )
    );

    private ManureAvailability(
        string id,
        string situation,
        string pool,
        Fraction available,
        string sourceId,
        DataStatus status
    ) => (Id, Situation, Pool, Available, SourceId, Status) = (id, situation, pool, available, sourceId, status);

    /// <summary>Gets the rows of the table.</summary>
    public static ImmutableArray<ManureAvailability> All => Everything.Rows;

    /// <summary>Gets the id.</summary>
    public string Id { get; }

    /// <summary>Gets the manure and the time it is spread.</summary>
    public string Situation { get; }

    /// <summary>Gets the pool the part is of, such as total nitrogen.</summary>
    public string Pool { get; }

    /// <summary>Gets the part available.</summary>
    public Fraction Available { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well the figure is known to stand there.</summary>
    public DataStatus Status { get; }

    /// <summary>Finds a row.</summary>
    /// <param name="id">Id such as <c>any-manure-growing-season</c>.</param>
    /// <returns>The row.</returns>
    /// <exception cref="KeyNotFoundException">No such row.</exception>
    public static ManureAvailability Find(string id) =>
        All.FirstOrDefault(a => a.Id == Guard.NotBlank(id))
        ?? throw new KeyNotFoundException($"No availability has the id '{id}'.");
}
