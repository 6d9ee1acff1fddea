using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>A table of soil tests, a sample a line, read by the rules of a single report.</summary>
/// <remarks>Fields are parted by commas, semicolons or tabs, whichever parts the header line into the stated headers. A cell that
/// cannot be taken is a problem with line and header, and counts as not stated; the other cells of its line stand.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ReportTable
{
    private ReportTable(ReportTableReader read) =>
        (Rows, Problems, UnreadHeaders) = (read.Rows, read.Problems, read.UnreadHeaders);

    /// <summary>Gets the reports in the order of the file.</summary>
    public ImmutableArray<TabledReport> Rows { get; }

    /// <summary>Gets what could not be taken, in the order of the file.</summary>
    public ImmutableArray<CellProblem> Problems { get; }

    /// <summary>Gets the headers of the columns that nobody stated the meaning of.</summary>
    public ImmutableArray<string> UnreadHeaders { get; }

    /// <summary>Reads a table.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="file">Name of the file, for messages.</param>
    /// <param name="columns">What its columns hold; others are left unread.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">No column, or two of one header.</exception>
    /// <exception cref="DataFormatException">No header line that names every column, or a quote that is not closed; the message
    /// names file, line and field.</exception>
    public static ReportTable Read(string text, string file, params IReadOnlyList<ReportColumn> columns) =>
        Read(text, file, SoilReport.None, columns);

    /// <summary>Reads a table whose reports state something alike.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="file">Name of the file, for messages.</param>
    /// <param name="alike">What every report of the table states alike, such as its laboratory, depth or soil class; a cell goes
    /// before it.</param>
    /// <param name="columns">What its columns hold; others are left unread.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">No column, or two of one header.</exception>
    /// <exception cref="DataFormatException">No header line that names every column, or a quote that is not closed; the message
    /// names file, line and field.</exception>
    public static ReportTable Read(string text, string file, SoilReport alike, params IReadOnlyList<ReportColumn> columns)
    {
        ArgumentNullException.ThrowIfNull(text);
        Guard.NotBlank(file);
        ArgumentNullException.ThrowIfNull(alike);
        Guard.NotEmpty(columns);
        if (columns.GroupBy(c => c.Header, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two meanings are stated for the column '{twice.Key}'.", nameof(columns));
        }

        var reader = new ReportTableReader(file, alike, columns);
        reader.Read(text);
        return new(reader);
    }

    /// <summary>A number of every report as a column, such as <c>r => r.WaterPh?.Value</c>.</summary>
    /// <param name="number">The number; null where the report does not print it.</param>
    /// <returns>The numbers, NaN for null: what the columns of this room take.</returns>
    public double[] Numbers(Func<SoilReport, double?> number)
    {
        ArgumentNullException.ThrowIfNull(number);
        double[] numbers = new double[Rows.Length];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = number(Rows[i].Report) ?? double.NaN;
        }

        return numbers;
    }

    /// <summary>How many reports and problems.</summary>
    /// <returns>Text such as <c>500 reports, 3 problems</c>.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Rows.Length, 0)} reports, {Amounts.Print(Problems.Length, 0)} problems";
}
