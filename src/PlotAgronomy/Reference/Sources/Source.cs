using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>A publication, or a named practice of the trade, that a number comes from.</summary>
/// <example>
/// <code>
/// Console.WriteLine(Source.Find("SEED-S01").Publisher);
/// // USDA NRCS Alexandria, Louisiana
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial class Source
{
    private readonly string? supersededBy;
    private readonly Func<string, Source> find;

    internal Source(CsvRow row, Func<string, Source> find)
    {
        this.find = find;
        Id = row.Text("id");
        Title = row.Text("title");
        Publisher = row.Text("publisher");
        Edition = row.Text("edition");
        supersededBy = row.TextOrNull("superseded_by");
        Kind = row.Choice<SourceKind>("kind");
    }

    /// <summary>Gets the id used beside every number.</summary>
    public string Id { get; }

    /// <summary>Gets the title.</summary>
    public string Title { get; }

    /// <summary>Gets who published it.</summary>
    public string Publisher { get; }

    /// <summary>Gets the year or edition as printed; "undated" where none is.</summary>
    public string Edition { get; }

    /// <summary>Gets the source that replaces this one, or null when it is current.</summary>
    public Source? SupersededBy => supersededBy is null ? null : find(supersededBy);

    internal SourceKind Kind { get; }

    /// <summary>What stands on a sheet behind the id.</summary>
    internal string Citation =>
        Kind == SourceKind.Practice ? $"{Title}, no institution behind it" : $"{Title}. {Publisher}, {Edition}";

    /// <summary>Text such as <c>Title. Institution, 2025 [ID]</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string superseded = supersededBy is null ? "" : $" (superseded by {supersededBy})";
        return $"{Citation} [{Id}]{superseded}";
    }
}
