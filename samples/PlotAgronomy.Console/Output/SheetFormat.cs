namespace PlotAgronomy.Sample.Output;

/// <summary>How a sheet is written.</summary>
public enum SheetFormat
{
    /// <summary>For a terminal; readable without colour.</summary>
    Text,

    /// <summary>Markdown.</summary>
    Markdown,

    /// <summary>One page to print, with its style and drawings in it.</summary>
    Html,

    /// <summary>JSON for other programs.</summary>
    Json,
}
