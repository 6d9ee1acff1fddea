namespace PlotAgronomy.Nutrients;

/// <summary>The standing of an answer is that of the weakest number in it.</summary>
internal static class Statuses
{
    internal static DataStatus WeakestOf(params ReadOnlySpan<DataStatus> statuses) =>
        statuses.Contains(DataStatus.Memory) ? DataStatus.Memory
        : statuses.Contains(DataStatus.Practice) ? DataStatus.Practice
        : DataStatus.Read;
}
