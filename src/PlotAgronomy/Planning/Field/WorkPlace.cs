namespace PlotAgronomy.Planning;

/// <summary>Where in the work a warning or a caution stands.</summary>
public enum WorkPlace
{
    /// <summary>Where it is bought.</summary>
    Buying,

    /// <summary>Where lime is spread.</summary>
    Lime,

    /// <summary>Where fertilizer is spread.</summary>
    Fertilizer,

    /// <summary>Where nitrogen is given to the stand.</summary>
    Dressing,

    /// <summary>Where legumes are inoculated.</summary>
    Inoculating,

    /// <summary>Where seed is sown.</summary>
    Sowing,

    /// <summary>Where the spreader is set.</summary>
    Spreader,

    /// <summary>What comes after.</summary>
    Afterwards,

    /// <summary>Nowhere: it changes nothing in the work. A warning is never left there.</summary>
    Behind,
}
