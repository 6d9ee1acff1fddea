using PlotAgronomy.Sheets;

namespace PlotAgronomy;

/// <summary>Ways to write a field sheet or a comparison: text, Markdown, HTML, JSON. Each ends with a line end and depends on
/// nothing but the sheet.</summary>
/// <example>
/// <code>
/// var plan = PlanFile.Read(File.ReadAllText("my-plot.json")).Plan!;
/// string page = FieldSheet.Of(plan.Solve()).ToMarkdown();
/// Console.WriteLine(page.Split('\n')[0]);
/// // # Fern Bottom: planting of 2026-09-12
/// </code>
/// </example>
public static class FieldSheetWriting
{
    /// <summary>Fewest characters a line of text may have: 60.</summary>
    public const int LeastWidth = 60;

    /// <summary>Most characters a line of text may have: 200.</summary>
    public const int MostWidth = 200;

    /// <summary>Characters a line of text has where none are named: 100.</summary>
    public const int UsualWidth = 100;

    /// <param name="sheet">Sheet.</param>
    extension(FieldSheet sheet)
    {
        /// <summary>Writes the sheet as plain rows for a terminal or a printer, readable in black and white.</summary>
        /// <param name="width">Characters a line may have; from 60 to 200.</param>
        /// <param name="showWork">Whether the working stands below each figure.</param>
        /// <returns>Lines that each end with <c>\n</c>, without blanks before it.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A width outside its range.</exception>
        public string ToText(int width = UsualWidth, bool showWork = false)
        {
            ArgumentNullException.ThrowIfNull(sheet);
            Guard.Between(width, LeastWidth, MostWidth, "characters");
            return SheetTextWriter.Write(sheet, width, showWork);
        }

        /// <summary>Writes the sheet as Markdown.</summary>
        /// <param name="showWork">Whether the working stands below each figure.</param>
        /// <returns>The page.</returns>
        public string ToMarkdown(bool showWork = false)
        {
            ArgumentNullException.ThrowIfNull(sheet);
            return SheetMarkdownWriter.Write(sheet, showWork);
        }

        /// <summary>Writes the sheet as one HTML page that is printed on letter or A4: its style and drawings lie in it, nothing
        /// is fetched and no script runs.</summary>
        /// <param name="showWork">Whether the working stands below each figure.</param>
        /// <returns>The page, well-formed also as XML.</returns>
        public string ToHtml(bool showWork = false)
        {
            ArgumentNullException.ThrowIfNull(sheet);
            return SheetHtmlWriter.Write(sheet, showWork);
        }

        /// <summary>Writes the sheet as JSON for other programs: the shape that <c>docs/field-sheet.md</c> describes.</summary>
        /// <param name="showWork">Whether each figure carries its working.</param>
        /// <returns>One indented object, in plain ASCII.</returns>
        public string ToJson(bool showWork = false)
        {
            ArgumentNullException.ThrowIfNull(sheet);
            return SheetJsonWriter.Write(sheet, showWork);
        }
    }
}
