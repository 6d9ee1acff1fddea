using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>A published ratio of the broadcast to the drilled rate.</summary>
public sealed class BroadcastFactor
{
    private static readonly Lazy<ImmutableArray<BroadcastFactor>> Table = new(() =>
        [
            .. CsvTable
                .Embedded("Seeds/Data/broadcast-factors.csv", "id", "context", "low", "high", "source_id", "locator", "status")
                .Rows.Select(r => new BroadcastFactor
                {
                    Context = r.Text("context"),
                    Low = r.Number("low"),
                    High = r.Number("high"),
                    Evidence = KindEvidence.FromRow(r),
                }),
        ]
    );

    /// <summary>Gets all published ratios.</summary>
    public static IReadOnlyList<BroadcastFactor> All => Table.Value;

    /// <summary>Gets the crop or circumstance.</summary>
    public required string Context { get; init; }

    /// <summary>Gets the lower ratio, a pure number.</summary>
    public required double Low { get; init; }

    /// <summary>Gets the higher ratio, a pure number.</summary>
    public required double High { get; init; }

    /// <summary>Gets the source.</summary>
    public required KindEvidence Evidence { get; init; }
}
