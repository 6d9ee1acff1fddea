using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>A material that stretches a small seed so that the spreader feeds steadily.</summary>
public sealed class Carrier
{
    private static readonly Catalog<Carrier> Catalog = new(
        "carrier",
        () => Table.Read("Spreading/Data/carriers.csv", FromRow),
        c => c.Id
    );

    /// <summary>Gets the id, such as <c>dry-sand</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Gets the name.</summary>
    public required string Name { get; init; }

    /// <summary>Gets a value indicating whether it may be mixed with seed.</summary>
    public required bool IsFit { get; init; }

    /// <summary>Gets a value indicating whether birds and game eat it.</summary>
    public required bool IsFeed { get; init; }

    /// <summary>Gets the smallest customary parts of carrier to one of seed, a pure number; null when none is given.</summary>
    public double? PartsLow { get; init; }

    /// <summary>Gets the largest customary parts of carrier to one of seed, a pure number; null when none is given.</summary>
    public double? PartsHigh { get; init; }

    /// <summary>Gets a value indicating whether the customary parts are by weight; else by volume.</summary>
    public bool PartsByWeight { get; init; }

    /// <summary>Gets the remark of the trade.</summary>
    public required string Remark { get; init; }

    /// <summary>Gets the source of the remark.</summary>
    public required string SourceId { get; init; }

    /// <summary>Gets all carriers named in the trade, fit or not.</summary>
    public static IReadOnlyList<Carrier> All => Catalog.Everything;

    /// <summary>Finds a carrier.</summary>
    /// <param name="id">Id, such as <c>dry-sand</c>.</param>
    /// <returns>The carrier.</returns>
    /// <exception cref="KeyNotFoundException">No carrier has this id.</exception>
    public static Carrier Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a carrier.</summary>
    /// <param name="id">Id.</param>
    /// <param name="carrier">The carrier, when there is one.</param>
    /// <param name="problem">What is wrong when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    public static bool TryFind(string? id, [NotNullWhen(true)] out Carrier? carrier, out string problem) =>
        Catalog.TryFind(id, out carrier, out problem);

    private static Carrier FromRow(CsvRow row) =>
        new()
        {
            Id = row.Text("id"),
            Name = row.Text("name"),
            IsFit = row.YesOrNo("fit"),
            IsFeed = row.YesOrNo("feed"),
            PartsLow = row.NumberOrNull("parts_low"),
            PartsHigh = row.NumberOrNull("parts_high"),
            PartsByWeight = row.TextOrNull("basis") == "weight",
            Remark = row.Text("remark"),
            SourceId = row.SourceId(),
        };
}
