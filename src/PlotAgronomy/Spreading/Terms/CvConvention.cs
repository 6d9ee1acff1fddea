namespace PlotAgronomy.Spreading;

/// <summary>Which standard deviation a coefficient of variation is made of.</summary>
public enum CvConvention
{
    /// <summary>Divided by the number of positions less one: always the larger of the two.</summary>
    Sample,

    /// <summary>Divided by the number of positions.</summary>
    Population,
}
