using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>Reads the sources that a row of a table names by their ids.</summary>
internal static class SourceCells
{
    /// <summary>The source of the row, where it can have one only.</summary>
    internal static Source Source(this CsvRow row, string column = "source_id") => Find(row, column, row.Text(column));

    internal static Source? SourceOrNull(this CsvRow row, string column) =>
        row.TextOrNull(column) is { } id ? Find(row, column, id) : null;

    /// <summary>The sources of the row.</summary>
    internal static ImmutableArray<Source> Sources(this CsvRow row) => Find(row, row.Text("source_id"));

    /// <summary>Where the row's numbers stand.</summary>
    internal static Origin Origin(this CsvRow row) => row.OriginOrNull() ?? throw row.Problem("source_id", "must not be empty");

    /// <summary>None where source, locator and status are all left empty.</summary>
    internal static Origin? OriginOrNull(this CsvRow row) =>
        row.OriginCells() is { } cells ? new(Find(row, cells.SourceIds), cells.Locator, cells.Status) : null;

    private static ImmutableArray<Source> Find(CsvRow row, string ids) =>
        [.. ids.Split(';').Select(id => Find(row, "source_id", id))];

    private static Source Find(CsvRow row, string column, string id) =>
        PlotAgronomy.Source.TryFind(id, out var source, out string problem) ? source : throw row.Problem(column, problem);
}
