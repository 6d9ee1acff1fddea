namespace PlotAgronomy.Reference;

/// <summary>A publication, or a named practice of the trade, that a number comes from.</summary>
public sealed class Source
{
    /// <summary>Gets the id used beside every number.</summary>
    public required string Id { get; init; }

    /// <summary>Gets the title.</summary>
    public required string Title { get; init; }

    /// <summary>Gets who published it.</summary>
    public required string Publisher { get; init; }

    /// <summary>Gets the year or edition as printed; "undated" where none is.</summary>
    public required string Edition { get; init; }

    /// <summary>Gets the id of the source that replaces this one, or null when it is current.</summary>
    public string? SupersededBy { get; init; }

    internal SourceKind Kind { get; init; }

    /// <summary>Text such as <c>Title. Institution, 2025 [ID]</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string superseded = SupersededBy is null ? "" : $" (superseded by {SupersededBy})";
        return $"{Title}. {Publisher}, {Edition} [{Id}]{superseded}";
    }

    internal static Source FromRow(CsvRow row) =>
        new()
        {
            Id = row.Text("id"),
            Title = row.Text("title"),
            Publisher = row.Text("publisher"),
            Edition = row.Text("edition"),
            SupersededBy = row.TextOrNull("superseded_by"),
            Kind = row.Choice<SourceKind>("kind"),
        };
}
