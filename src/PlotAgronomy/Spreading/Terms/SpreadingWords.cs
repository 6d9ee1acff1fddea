namespace PlotAgronomy.Spreading;

/// <summary>Words for the enumerations of this room.</summary>
internal static class SpreadingWords
{
    internal static EnumWords<DrivingMethod> DrivingMethods { get; } =
        new((DrivingMethod.BackAndForth, "back and forth"), (DrivingMethod.OneDirection, "all in one direction"));

    internal static EnumWords<SizeRule> SizeRatios { get; } =
        new(
            (SizeRule.DiameterTwoToOne, "largest diameter / smallest diameter"),
            (SizeRule.DensityTimesDiameter, "largest density x diameter / smallest")
        );

    /// <summary>Which of the two standard deviations a coefficient of variation is made of.</summary>
    internal static EnumWords<CvConvention> CvConventions { get; } = EnumWords<CvConvention>.FromNames();
}
