using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>A material that stretches a small seed so that the spreader feeds steadily.</summary>
public sealed class Carrier
{
    private static readonly Lazy<ImmutableArray<Carrier>> Table = new(Load);

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
    public static IReadOnlyList<Carrier> All => Table.Value;

    /// <summary>Finds a carrier.</summary>
    /// <param name="id">Id, such as <c>dry-sand</c>.</param>
    /// <returns>The carrier.</returns>
    /// <exception cref="KeyNotFoundException">No carrier has this id.</exception>
    public static Carrier Find(string id)
    {
        Guard.NotBlank(id);
        return Table.Value.FirstOrDefault(c => string.Equals(c.Id, id, StringComparison.OrdinalIgnoreCase))
            ?? throw new KeyNotFoundException(
                $"No carrier has the id '{id}'; known: {string.Join(", ", Table.Value.Select(c => c.Id))}."
            );
    }

    private static ImmutableArray<Carrier> Load() =>
        [
            .. CsvTable
                .Embedded(
                    "Spreading/Data/carriers.csv",
                    "id",
                    "name",
                    "fit",
                    "feed",
                    "parts_low",
                    "parts_high",
                    "basis",
                    "remark",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r => new Carrier
                {
                    Id = r.Text("id"),
                    Name = r.Text("name"),
                    IsFit = Yes(r, "fit"),
                    IsFeed = Yes(r, "feed"),
                    PartsLow = r.NumberOrNull("parts_low"),
                    PartsHigh = r.NumberOrNull("parts_high"),
                    PartsByWeight = r.TextOrNull("basis") == "weight",
                    Remark = r.Text("remark"),
                    SourceId = r.SourceId(),
                }),
        ];

    private static bool Yes(CsvRow row, string column) =>
        row.Text(column) switch
        {
            "yes" => true,
            "no" => false,
            _ => throw row.Problem(column, "expected yes or no"),
        };
}
