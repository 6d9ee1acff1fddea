namespace PlotAgronomy.Columns;

/// <summary>Codes of the findings that only a column raises, as <c>Columns/Data/findings.csv</c> lists them.</summary>
internal static class ColumnCodes
{
    internal const string NothingAlive = "column-nothing-alive";
    internal const string CropUnknown = "column-crop-unknown";
    internal const string ValueImpossible = "column-value-impossible";
    internal const string ValueMissing = "column-value-missing";
}
