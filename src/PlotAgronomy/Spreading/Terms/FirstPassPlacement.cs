namespace PlotAgronomy.Spreading;

/// <summary>Where the first pass runs.</summary>
public enum FirstPassPlacement
{
    /// <summary>Half a spacing inside the edge: little falls outside, the rim stays thin. The usual choice beside
    /// cover.</summary>
    HalfSpacingInside,

    /// <summary>On the edge itself: the full rate up to the edge, half of that pass falls outside, and one more pass is
    /// needed.</summary>
    OnEdge,
}
