using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>What twelve months in an ordinary warehouse did to one lot of seed (SEED-S34).</summary>
/// <remarks>Lots that tested alike ended 60-70 points apart: retest, do not predict.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class StorageRecord
{
    private static readonly Table<StorageRecord> Records = new("Seeds/Data/storage-records.csv", FromRow);

    private StorageRecord(Origin origin) => Origin = origin;

    /// <summary>Gets all records.</summary>
    public static ImmutableArray<StorageRecord> All => Records.Rows;

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

    internal Origin Origin { get; }

    private static StorageRecord FromRow(CsvRow row) =>
        new(row.Origin())
        {
            Crop = row.Text("crop"),
            Lot = row.Text("lot"),
            AtFirst = Fraction.FromPercent(row.Number("month_0_pct")),
            AfterSixMonths = Fraction.FromPercent(row.Number("month_6_pct")),
            AfterTwelveMonths = Fraction.FromPercent(row.Number("month_12_pct")),
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Crop}, lot {Lot}";
}
