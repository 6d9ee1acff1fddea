namespace PlotAgronomy.Land;

/// <summary>How widths taken at even spacing along a line become an area.</summary>
public enum OffsetRule
{
    /// <summary>Straight edges between the widths: area = spacing x (sum of widths, the end ones halved).</summary>
    StraightEdges,

    /// <summary>Simpson's rule, for smooth edges: area = spacing / 3 x (1, 4, 2, 4 ...
    /// 4, 1); needs an even number of strips.</summary>
    SmoothEdges,
}
