using System.Collections.Immutable;
using PlotAgronomy.Sheets;

namespace PlotAgronomy;

/// <summary>The sheet that is carried to the field, in the order a person works.</summary>
/// <example>
/// <code>
/// var plan = PlanFile.Read(File.ReadAllText("my-plot.json")).Plan!;
/// var sheet = FieldSheet.Of(plan.Solve());
/// Console.WriteLine(sheet.Title);
/// // Fern Bottom: planting of 2026-09-12
/// Console.WriteLine(sheet.Find("lime.buy")!.Value);
/// // 16 x 50 lb, 78.40 USD
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class FieldSheet
{
    /// <summary>Gets the title: plot and planting date.</summary>
    public required string Title
    {
        get;
        init => field = Guard.NotNull(value, nameof(Title));
    }

    /// <summary>Gets the sections, in the order of the work.</summary>
    public required ImmutableArray<SheetSection> Sections
    {
        get;
        init => field = Guard.Listed(value, nameof(Sections));
    }

    /// <summary>Gets all findings, most serious first.</summary>
    public required ImmutableArray<Finding> Findings
    {
        get;
        init => field = Guard.Listed(value, nameof(Findings));
    }

    /// <summary>Gets the sources of all numbers on the sheet.</summary>
    public required ImmutableArray<Source> Sources
    {
        get;
        init => field = Guard.Listed(value, nameof(Sources));
    }

    /// <summary>Gets its first sentence: on the sheet of a plan whether the plot may be sown; the title where there is
    /// none.</summary>
    public string FirstSentence => Sections.SelectMany(s => s.Blocks).OfType<SheetSentence>().FirstOrDefault()?.Text ?? Title;

    /// <summary>Gets every figure on the sheet.</summary>
    public ImmutableArray<SheetFigure> Figures =>
        [
            .. Sections
                .SelectMany(s => s.Blocks)
                .SelectMany(b =>
                    b switch
                    {
                        SheetFigure figure => [figure],
                        SheetTable table => table.Rows.Select(r => r.Figure).OfType<SheetFigure>(),
                        _ => Enumerable.Empty<SheetFigure>(),
                    }
                ),
        ];

    /// <summary>The sections that are printed, with the working or without.</summary>
    internal IEnumerable<SheetSection> Printed(bool showWork) => Sections.Where(s => showWork || s.Part != SheetPart.Work);

    /// <summary>Finds a figure by its code.</summary>
    /// <param name="code">Code, in capitals or not.</param>
    /// <returns>The figure, or null.</returns>
    public SheetFigure? Find(string code) =>
        Figures.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase));

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;
}
