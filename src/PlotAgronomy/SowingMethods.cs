namespace PlotAgronomy;

internal static class SowingMethods
{
    internal static EnumWords<SowingMethod> Words { get; } =
        new(
            (SowingMethod.Drilled, "drilled"),
            (SowingMethod.Broadcast, "broadcast"),
            (SowingMethod.BroadcastUnderCover, "broadcast under cover"),
            (SowingMethod.FrostSeeded, "frost-seeded")
        );

    internal static string InWords(SowingMethod method) => Words[method];
}
