namespace PlotAgronomy.Reference;

/// <summary>Words for how well a number is known.</summary>
internal static class DataStatuses
{
    internal static EnumWords<DataStatus> Words { get; } = EnumWords<DataStatus>.FromNames();

    /// <summary>Whether it was seen in print, in the publication itself or as another quotes it.</summary>
    internal static bool IsSeen(DataStatus status) => status is DataStatus.Read or DataStatus.Secondary;

    /// <summary>An answer is known as well as the least well known number in it.</summary>
    internal static DataStatus WeakestOf(params ReadOnlySpan<DataStatus> statuses)
    {
        var weakest = DataStatus.Read;
        foreach (var status in statuses)
        {
            weakest = Weakness(status) > Weakness(weakest) ? status : weakest;
        }

        return weakest;
    }

    private static int Weakness(DataStatus status) =>
        status switch
        {
            DataStatus.Read => 0,
            DataStatus.Secondary => 1,
            DataStatus.Practice => 2,
            _ => 3,
        };
}
