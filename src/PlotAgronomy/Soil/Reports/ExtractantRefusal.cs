using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Two extractants between which research has shown that there is no equation, in either direction.</summary>
internal sealed class ExtractantRefusal
{
    private static readonly Table<ExtractantRefusal> Table = new("Soil/Data/extractant-refusals.csv", FromRow);

    internal static ImmutableArray<ExtractantRefusal> All => Table.Rows;

    internal required SoilAnalyte Analyte { get; init; }

    internal required Extractant From { get; init; }

    internal required Extractant To { get; init; }

    internal required string Reason { get; init; }

    internal required Origin Origin { get; init; }

    internal bool Covers(SoilAnalyte analyte, Extractant from, Extractant to) =>
        Analyte == analyte && ((From == from && To == to) || (From == to && To == from));

    private static ExtractantRefusal FromRow(CsvRow row) =>
        new()
        {
            Analyte = row.Choice<SoilAnalyte>("analyte"),
            From = row.Choice<Extractant>("from_extractant"),
            To = row.Choice<Extractant>("to_extractant"),
            Reason = row.Text("reason"),
            Origin = row.Origin(),
        };
}
