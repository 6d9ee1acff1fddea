namespace PlotAgronomy.Fertilizers;

/// <summary>Where fertilizer lies beside the seed.</summary>
public enum SeedRowPlacement
{
    /// <summary>In contact with the seed.</summary>
    InContactWithSeed,

    /// <summary>In the row with the seed.</summary>
    WithSeed,

    /// <summary>A quarter to half an inch away.</summary>
    QuarterToHalfInchAway,

    /// <summary>One to two inches away.</summary>
    OneToTwoInchesAway,

    /// <summary>More than two inches away.</summary>
    MoreThanTwoInchesAway,
}
