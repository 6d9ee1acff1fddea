using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>The published and customary limits of this room, by id.</summary>
internal static class RecordConstants
{
    internal static ConstantTable All { get; } = new("Records/Data/constants.csv");
}
