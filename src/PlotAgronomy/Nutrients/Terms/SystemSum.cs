namespace PlotAgronomy.Nutrients;

/// <summary>How a recommendation system comes from a test to a rate.</summary>
internal enum SystemSum
{
    /// <summary>A curve of the index.</summary>
    IndexCurve,

    /// <summary>A printed grid of ratings.</summary>
    RatingGrid,

    /// <summary>Build-up below a level, removal as far as a limit.</summary>
    CriticalLevelAndLimit,

    /// <summary>Build-up below a level, removal, then a taper.</summary>
    CriticalLevelAndTaper,

    /// <summary>Build-up by the square root of the test.</summary>
    SquareRootBuildUp,

    /// <summary>Build-up to a goal, removal as far as a limit.</summary>
    GoalAndLimit,

    /// <summary>Straight lines between printed points.</summary>
    BetweenPoints,

    /// <summary>Yes or no at a level, without a rate.</summary>
    CriticalLevel,

    /// <summary>An equation of test and yield.</summary>
    LinearEquation,

    /// <summary>A printed rate for each class.</summary>
    ClassRate,
}
