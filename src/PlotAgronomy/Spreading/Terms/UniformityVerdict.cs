namespace PlotAgronomy.Spreading;

/// <summary>What published limits say of an overlapped pattern. The upper limit belongs to the better class.</summary>
public enum UniformityVerdict
{
    /// <summary>CV at most 15 %: certification benchmark (SPREAD-S18).</summary>
    Good,

    /// <summary>CV above 15 to 20 %: satisfactory (SPREAD-S25).</summary>
    Satisfactory,

    /// <summary>CV above 20 to 25 %: the limit for low-analysis fertilizer (SPREAD-S26).</summary>
    Marginal,

    /// <summary>CV above 25 %: poor (SPREAD-S25).</summary>
    Poor,
}
