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
    internal static ImmutableArray<Source> Sources(this CsvRow row) =>
        [.. row.Text("source_id").Split(';').Select(id => Find(row, "source_id", id))];

    /// <summary>Where the row's numbers stand; only a number that was read must have a place in its publication.</summary>
    internal static Origin Origin(this CsvRow row)
    {
        var status = row.Status();
        string locator = status == DataStatus.Read ? row.Text("locator") : row.TextOrNull("locator") ?? "";
        return new(row.Sources(), locator, status);
    }

    /// <summary>None where source, locator and status are all left empty.</summary>
    internal static Origin? OriginOrNull(this CsvRow row) =>
        (row.TextOrNull("source_id") ?? row.TextOrNull("locator") ?? row.TextOrNull("status")) is null ? null : row.Origin();

    private static Source Find(CsvRow row, string column, string id) =>
        SourceCatalog.TryFind(id, out var source, out string problem) ? source : throw row.Problem(column, problem);
}
