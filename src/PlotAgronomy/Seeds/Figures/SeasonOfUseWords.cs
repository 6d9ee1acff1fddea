namespace PlotAgronomy.Seeds;

/// <summary>The five seasons of use with their months.</summary>
internal static class SeasonOfUseWords
{
    internal static EnumWords<SeasonOfUse> All { get; } =
        new(
            (SeasonOfUse.Spring, "spring (March to May)"),
            (SeasonOfUse.Summer, "summer (June to August)"),
            (SeasonOfUse.EarlyFall, "early fall (September to mid October)"),
            (SeasonOfUse.MidFall, "mid fall (mid October to November)"),
            (SeasonOfUse.LateWinter, "late winter (December to February)")
        );
}
