namespace PlotAgronomy.Fertilizers;

/// <summary>Words of the trade for compounds and materials; a plan file uses the same ones.</summary>
internal static class FertilizerWords
{
    internal static EnumWords<FertilizerSubstance> Substances { get; } = EnumWords<FertilizerSubstance>.FromNames();

    internal static EnumWords<ChemicalForm> Forms { get; } = EnumWords<ChemicalForm>.FromNames();

    internal static EnumWords<SeedRowCrop> SeedRowCrops { get; } = EnumWords<SeedRowCrop>.FromNames();

    internal static EnumWords<RatePolicy> Policies { get; } =
        new(
            (RatePolicy.MeetEveryNeed, "meet every need the product serves"),
            (RatePolicy.PassNoNeedAndNoCap, "pass no need and no cap")
        );

    internal static EnumWords<MaterialProperty> Properties { get; } = EnumWords<MaterialProperty>.FromNames();
}
