namespace PlotAgronomy.Blends;

/// <summary>Words for the enumerations of this room.</summary>
internal static class BlendWords
{
    internal static EnumWords<BlendMeasure> Measures { get; } =
        new(
            (BlendMeasure.Stand, "share of a full stand"),
            (BlendMeasure.LiveSeeds, "live seeds"),
            (BlendMeasure.LiveWeight, "live weight"),
            (BlendMeasure.BulkWeight, "bulk weight")
        );
}
