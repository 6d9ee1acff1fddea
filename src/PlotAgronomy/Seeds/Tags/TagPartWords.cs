namespace PlotAgronomy.Seeds;

internal static class TagPartWords
{
    internal static EnumWords<TagPart> All { get; } =
        new(
            (TagPart.Pure, "pure seed"),
            (TagPart.PureLive, "pure live seed"),
            (TagPart.Germination, "germination"),
            (TagPart.Hard, "hard seed"),
            (TagPart.Dormant, "dormant seed"),
            (TagPart.Total, "total germination"),
            (TagPart.OtherCrop, "other crop seed"),
            (TagPart.Inert, "inert matter"),
            (TagPart.Weed, "weed seed"),
            (TagPart.Coating, "coating")
        );

    internal static string List(IEnumerable<TagPart> parts) => string.Join(", ", parts.Select(p => All[p]));
}
