namespace PlotAgronomy.Nutrients;

/// <summary>What a class says, whatever its institution calls it: systems use a dozen vocabularies, and "high" is enough in one
/// and too much in another.</summary>
public enum RatingStanding
{
    /// <summary>The class has no counterpart in other systems, such as a salinity class or a range of a guide.</summary>
    NotComparable,

    /// <summary>Far too little: a crop nearly always answers.</summary>
    WellBelow,

    /// <summary>Too little: a crop often answers.</summary>
    Below,

    /// <summary>Enough, and not much more.</summary>
    Enough,

    /// <summary>More than a crop needs.</summary>
    Above,

    /// <summary>So much that the institution warns of it.</summary>
    Excessive,
}
