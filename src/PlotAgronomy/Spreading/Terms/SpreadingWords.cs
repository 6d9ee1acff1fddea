namespace PlotAgronomy.Spreading;

/// <summary>Words for the enumerations of this room.</summary>
internal static class SpreadingWords
{
    internal static EnumWords<DrivingMethod> DrivingMethods { get; } =
        new((DrivingMethod.BackAndForth, "back and forth"), (DrivingMethod.OneDirection, "all in one direction"));

    internal static EnumWords<CvConvention> CvConventions { get; } = EnumWords<CvConvention>.FromNames();
}
