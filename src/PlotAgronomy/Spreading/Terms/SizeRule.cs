namespace PlotAgronomy.Spreading;

/// <summary>Which kinds may share one pass.</summary>
public enum SizeRule
{
    /// <summary>Largest to smallest seed diameter at most 2:1 (common practice).</summary>
    DiameterTwoToOne,

    /// <summary>Largest to smallest density times diameter at most 1.5:1, for kinds that should also fly alike (common practice).
    /// It
    /// takes the place of the diameter rule and needs a density for every kind.</summary>
    DensityTimesDiameter,
}
