using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>What twelve months in an ordinary warehouse did to one lot of seed (SEED-S34).</summary>
/// <remarks>Lots that tested alike ended 60-70 points apart: retest, do not predict.</remarks>
public sealed class StorageRecord
{
    private static readonly Lazy<ImmutableArray<StorageRecord>> Table = new(() =>
        [
            .. CsvTable
                .Embedded(
                    "Seeds/Data/storage-records.csv",
                    "crop",
                    "lot",
                    "month_0_pct",
                    "month_6_pct",
                    "month_12_pct",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r => new StorageRecord
                {
                    Crop = r.Text("crop"),
                    Lot = r.Text("lot"),
                    AtFirst = Fraction.FromPercent(r.Number("month_0_pct")),
                    AfterSixMonths = Fraction.FromPercent(r.Number("month_6_pct")),
                    AfterTwelveMonths = Fraction.FromPercent(r.Number("month_12_pct")),
                }),
        ]
    );

    /// <summary>Gets all records.</summary>
    public static IReadOnlyList<StorageRecord> All => Table.Value;

    /// <summary>Gets the crop.</summary>
    public required string Crop { get; init; }

    /// <summary>Gets the letter of the lot.</summary>
    public required string Lot { get; init; }

    /// <summary>Gets the germination at first.</summary>
    public required Fraction AtFirst { get; init; }

    /// <summary>Gets the germination after six months.</summary>
    public required Fraction AfterSixMonths { get; init; }

    /// <summary>Gets the germination after twelve months.</summary>
    public required Fraction AfterTwelveMonths { get; init; }
}
