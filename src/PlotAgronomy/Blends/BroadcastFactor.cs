using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>How much more seed a broadcast stand takes than a drilled one. It goes on a drilled rate, once.</summary>
/// <remarks>Published factors run from 1.2 to 2.0. A rate that is already broadcast refuses a factor: applying it twice is the
/// commonest error with food-plot charts, most of which print broadcast rates only.</remarks>
public sealed class BroadcastFactor
{
    private static readonly Lazy<ImmutableArray<BroadcastFactor>> Table = new(() =>
        [.. CsvTable.Embedded("blends-broadcast-factors.csv", "id", "context", "cover", "factor_low", "factor_high", "source_id", "locator", "status").Rows.Select(FromRow)]);

    private BroadcastFactor(string id, string context, SeedCover? cover, double lowest, double highest, string sourceId, DataStatus status)
    {
        Id = id;
        Context = context;
        Cover = cover;
        Lowest = lowest;
        Highest = highest;
        SourceId = sourceId;
        Status = status;
    }

    /// <summary>Gets every published factor, and the three of practice.</summary>
    public static IReadOnlyList<BroadcastFactor> All => Table.Value;

    /// <summary>Gets the stable id.</summary>
    public string Id { get; }

    /// <summary>Gets what it was published for.</summary>
    public string Context { get; }

    /// <summary>Gets how the seed is covered, for the factors of practice; else null.</summary>
    public SeedCover? Cover { get; }

    /// <summary>Gets the lowest factor, a pure number.</summary>
    public double Lowest { get; }

    /// <summary>Gets the highest factor, a pure number.</summary>
    public double Highest { get; }

    /// <summary>Gets the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well it is known.</summary>
    public DataStatus Status { get; }

    /// <summary>The factor of practice for how the seed is covered.</summary>
    /// <param name="cover">How the seed is covered.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown cover.</exception>
    public static BroadcastFactor For(SeedCover cover)
    {
        Guard.Defined(cover);
        return Table.Value.Single(f => f.Cover == cover);
    }

    /// <summary>Finds a factor.</summary>
    /// <param name="id">Id of the factor.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="KeyNotFoundException">No factor has this id.</exception>
    public static BroadcastFactor Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Table.Value.FirstOrDefault(f => f.Id == id) ?? throw new KeyNotFoundException($"No broadcast factor has the id '{id}'; there are: {string.Join(", ", Table.Value.Select(f => f.Id))}.");
    }

    /// <summary>Turns a drilled rate into the broadcast one.</summary>
    /// <param name="drilled">Rate for drilling, above 0.</param>
    /// <returns>The rate for broadcasting, as a range where the factor is one.</returns>
    /// <exception cref="ArgumentException">The rate is not drilled: the factor would be counted twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rate of zero.</exception>
    /// <remarks>broadcast rate = drilled rate x factor.</remarks>
    public PureLiveSeedRateRange Apply(PureLiveSeedRate drilled) => drilled.Method == SowingMethod.Drilled
        ? PureLiveSeedRateRange.Between(Broadcast(drilled, Lowest), Broadcast(drilled, Highest))
        : throw new ArgumentException("The rate is broadcast already; a broadcast factor goes on a drilled rate, once.", nameof(drilled));

    /// <summary>What the factor is for, and its range.</summary>
    /// <returns>Text such as <c>covered-and-rolled: 1.25</c>.</returns>
    public override string ToString() => Lowest < Highest
        ? $"{Id}: {Amounts.Print(Lowest, 2)}-{Amounts.Print(Highest, 2)}"
        : $"{Id}: {Amounts.Print(Lowest, 2)}";

    private static PureLiveSeedRate Broadcast(PureLiveSeedRate drilled, double factor) => PureLiveSeedRate.Of(drilled.Rate * factor, SowingMethod.Broadcast);

    private static BroadcastFactor FromRow(CsvRow row) => new(
        row.Text("id"), row.Text("context"), row.TextOrNull("cover") is null ? null : row.Choice<SeedCover>("cover"),
        row.Number("factor_low"), row.Number("factor_high"), row.SourceId(), row.Status());
}
