namespace PlotAgronomy.Seeds;

internal static class SowingMethods
{
    internal static string InWords(SowingMethod method) =>
        method switch
        {
            SowingMethod.Drilled => "drilled",
            SowingMethod.Broadcast => "broadcast",
            SowingMethod.BroadcastUnderCover => "broadcast under cover",
            _ => "frost-seeded",
        };
}
