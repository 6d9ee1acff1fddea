namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>How a field is typed.</summary>
public enum FieldSort
{
    Text,
    Number,
    Choice,
    Flag,

    /// <summary>Text of several lines, kept as a list.</summary>
    Lines,

    /// <summary>Latitude and longitude.</summary>
    Corner,
    Part,
    List,
}
