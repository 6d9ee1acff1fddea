namespace PlotAgronomy.Sheets;

/// <summary>How the printed page looks: body 10 pt, tables 9 pt, margins 12 mm, drawings at least 70 mm wide.</summary>
internal static class PageStyle
{
    internal const string Text = """
        @page { margin: 12mm; }
        * { box-sizing: border-box; }
        body { font: 10pt/1.3 Georgia, "Times New Roman", serif; color: black; background: white; margin: 0; }
        main { max-width: 190mm; margin: 0 auto; padding: 4mm; }
        h1 { font-size: 15pt; margin: 0 0 2mm; border-bottom: 1.2pt solid black; }
        h2 { font-size: 11.5pt; margin: 3.5mm 0 1mm; break-after: avoid; }
        p { margin: 0 0 1mm; }
        ol { margin: 0; padding-left: 7mm; }
        li { margin: 0 0 0.6mm; break-inside: avoid; }
        table { border-collapse: collapse; font-size: 9pt; margin: 0 0 1.5mm; }
        th, td { text-align: left; vertical-align: top; padding: 0.3mm 3mm 0.3mm 0; font-weight: normal; }
        .rows { width: 100%; }
        .rows thead th { border-bottom: 0.8pt solid black; font-style: italic; }
        .rows tbody td { border-bottom: 0.3pt solid black; }
        .remarks th { font-style: italic; white-space: nowrap; }
        tr { break-inside: avoid; }
        figure { margin: 2mm 0; break-inside: avoid; }
        img { width: 95mm; min-width: 70mm; max-width: 100%; display: block; }
        figcaption { font-size: 9pt; }
        @media print { main { max-width: none; padding: 0; } }

        """;
}
