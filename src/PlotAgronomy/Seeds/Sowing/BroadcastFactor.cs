using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>A published ratio of the broadcast to the drilled rate.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class BroadcastFactor
{
    private static readonly Catalog<BroadcastFactor> Factors = new(
        "broadcast factor",
        () => new Table<BroadcastFactor>("Seeds/Data/broadcast-factors.csv", FromRow).Rows,
        f => f.Id,
        f => f.Evidence.Status
    );

    private BroadcastFactor() { }

    /// <summary>Gets the ratios that were read in a publication.</summary>
    public static ImmutableArray<BroadcastFactor> All => Factors.All;

    /// <summary>Gets the ratios that rest on memory.</summary>
    public static ImmutableArray<BroadcastFactor> Unchecked => Factors.Unchecked;

    /// <summary>Gets the stable id, such as <c>berseem</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Gets the crop or circumstance.</summary>
    public required string Context { get; init; }

    /// <summary>Gets the lower ratio, a pure number.</summary>
    public required double Low { get; init; }

    /// <summary>Gets the higher ratio, a pure number.</summary>
    public required double High { get; init; }

    /// <summary>Gets the source.</summary>
    public required Origin Evidence { get; init; }

    /// <summary>Finds a ratio, checked or not.</summary>
    /// <param name="id">Id of the ratio.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="KeyNotFoundException">No ratio has this id; the message lists all.</exception>
    public static BroadcastFactor Find(string id) => Factors.Find(id);

    /// <summary>Looks for a ratio, checked or not.</summary>
    /// <param name="id">Id of the ratio.</param>
    /// <param name="entry">The ratio, when there is one.</param>
    /// <param name="problem">What is wrong, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    public static bool TryFind(string? id, [NotNullWhen(true)] out BroadcastFactor? entry, out string problem) =>
        Factors.TryFind(id, out entry, out problem);

    private static BroadcastFactor FromRow(CsvRow row) =>
        new()
        {
            Id = row.Text("id"),
            Context = row.Text("context"),
            Low = row.Number("low_ratio"),
            High = row.Number("high_ratio"),
            Evidence = row.Origin(),
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {Amounts.Print(Low, 2)} to {Amounts.Print(High, 2)} times the drilled rate";
}
