namespace PlotAgronomy.Reference;

/// <summary>Words for how well a number is known.</summary>
internal static class DataStatuses
{
    internal static EnumWords<DataStatus> Words { get; } = EnumWords<DataStatus>.FromNames();
}
