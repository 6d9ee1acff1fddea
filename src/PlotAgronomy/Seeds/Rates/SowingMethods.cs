namespace PlotAgronomy.Seeds;

internal static class SowingMethods
{
    private static readonly EnumWords<SowingMethod> Words = new(
        (SowingMethod.Drilled, "drilled"),
        (SowingMethod.Broadcast, "broadcast"),
        (SowingMethod.BroadcastUnderCover, "broadcast under cover"),
        (SowingMethod.FrostSeeded, "frost-seeded")
    );

    internal static string InWords(SowingMethod method) => Words[method];
}
