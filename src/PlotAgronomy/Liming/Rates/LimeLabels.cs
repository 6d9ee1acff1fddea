namespace PlotAgronomy.Liming;

/// <summary>Labels of a printed rate of lime.</summary>
[Flags]
internal enum LimeLabels
{
    None = 0,

    Target = 1,

    Depth = 2,

    Basis = 4,
}
