namespace PlotAgronomy.Sheets;

/// <summary>How the printed page looks: body 10 pt, tables 9 pt, margins 12 mm, drawings at least 70 mm wide beside the
/// text.</summary>
internal static class PageStyle
{
    internal const string Text = """
        @page { margin: 12mm; }
        * { box-sizing: border-box; }
        body { font: 10pt/1.12 "Times New Roman", "Liberation Serif", Georgia, serif; }
        body { color: black; background: white; margin: 0; }
        main { max-width: 190mm; margin: 0 auto; padding: 4mm; }
        h1 { font-size: 14pt; margin: 0 0 1mm; border-bottom: 1.2pt solid black; }
        h2 { font-size: 11pt; margin: 0.9mm 0 0.2mm; border-bottom: 0.4pt solid black; break-after: avoid; overflow: hidden; }
        p { margin: 0 0 0.4mm; }
        ol { margin: 0; padding-left: 7mm; }
        li { margin: 0 0 0.2mm; break-inside: avoid; }
        table { border-collapse: collapse; font-size: 9pt; line-height: 1.08; margin: 0 0 0.6mm; }
        th, td { text-align: left; vertical-align: top; padding: 0.1mm 3mm 0.1mm 0; font-weight: normal; }
        .rows { width: 100%; }
        .rows thead th { border-bottom: 0.8pt solid black; font-style: italic; }
        .rows tbody td { border-bottom: 0.3pt solid black; }
        .remarks th { font-style: italic; white-space: nowrap; }
        tr { break-inside: avoid; }
        figure { float: right; width: 70mm; margin: 1mm 0 1mm 4mm; break-inside: avoid; }
        img { width: 70mm; display: block; }
        figcaption { font-size: 9pt; }
        #buy { columns: 2; column-gap: 6mm; }
        #buy h2 { column-span: all; }
        .behind { clear: both; columns: 2; column-gap: 6mm; }
        .behind td, .behind th { padding-right: 1.5mm; }
        .behind .rows td + td { white-space: nowrap; }
        @media print { main { max-width: none; padding: 0; } }

        """;
}
