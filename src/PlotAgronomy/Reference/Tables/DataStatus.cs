namespace PlotAgronomy;

/// <summary>How well a number is known to stand in the publication it names.</summary>
public enum DataStatus
{
    /// <summary>Seen in the publication, or exact by definition.</summary>
    Read,

    /// <summary>Seen as another publication quotes the one that is named: it answers like one that was read, and
    /// says so.</summary>
    Secondary,

    /// <summary>Named publication, number not yet seen there: answers only when its method is asked for by name.</summary>
    Memory,

    /// <summary>Common practice of the trade without an institution's publication.</summary>
    Practice,
}
