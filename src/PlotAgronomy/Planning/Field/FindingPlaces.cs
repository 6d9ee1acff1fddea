using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Which findings stand at a place of the work: whole codes at any severity their row names, the rest of a room's from
/// the severity on that its row names.</summary>
internal static class FindingPlaces
{
    private static readonly Table<Row> Rows = new("Planning/Data/places.csv", r => new Row(r));

    /// <summary>The place of a finding; null where it stands at none.</summary>
    internal static WorkPlace? Of(Finding finding) =>
        RowOf(finding.Code) is { } row && finding.Severity >= row.Least ? row.Place : null;

    /// <summary>The place of a question that is asked where the work is done, not before; null for any other.</summary>
    internal static WorkPlace? Of(OpenQuestion question) =>
        RowOf(question.Code) is { } row && row.Code == question.Code ? row.Place : null;

    /// <summary>Whether a row names it alone, not with the rest of its room.</summary>
    internal static bool IsNamed(Finding finding) => RowOf(finding.Code) is { } row && row.Code == finding.Code;

    private static Row? RowOf(string code) => Rows.Rows.Where(r => r.IsOf(code)).MaxBy(r => r.Code.Length);

    private sealed class Row(CsvRow row)
    {
        internal Origin Origin { get; } = row.Origin();

        internal string Code { get; } = row.Text("code");

        internal WorkPlace Place { get; } = row.Choice<WorkPlace>("place");

        internal FindingSeverity Least { get; } = row.Choice<FindingSeverity>("least_severity");

        /// <summary>A code that ends with a hyphen stands for all that begin with it.</summary>
        internal bool IsOf(string code) =>
            Code.EndsWith('-')
                ? code.StartsWith(Code, StringComparison.Ordinal)
                : string.Equals(code, Code, StringComparison.Ordinal);
    }
}
