namespace PlotAgronomy.Seeds;

/// <summary>The parts a percentage on a tag may stand for.</summary>
internal enum TagPart
{
    Pure,
    PureLive,
    Germination,
    Hard,
    Dormant,
    Total,
    OtherCrop,
    Inert,
    Weed,
    Coating,
}
