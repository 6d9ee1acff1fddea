using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The standing of an answer is that of the weakest number in it.</summary>
internal static class Statuses
{
    internal static DataStatus WeakestOf(params ReadOnlySpan<DataStatus> statuses) => DataStatuses.WeakestOf(statuses);
}
