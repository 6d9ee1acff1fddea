namespace PlotAgronomy.Spreading;

/// <summary>Which of rate, flow, speed and swath was solved from the other three.</summary>
internal enum SpreaderUnknown
{
    /// <summary>The rate on the ground.</summary>
    Rate,

    /// <summary>The flow that must leave the hopper.</summary>
    Flow,

    /// <summary>The ground speed.</summary>
    Speed,

    /// <summary>The effective swath: the spacing of the passes.</summary>
    Swath,
}
