namespace PlotAgronomy.Fertilizers;

/// <summary>How a linear program ended.</summary>
internal enum SimplexOutcome
{
    /// <summary>The optimum was found.</summary>
    Optimal,

    /// <summary>No column values respect all limits.</summary>
    Infeasible,

    /// <summary>The optimum costs more than the cutoff; the search stopped there.</summary>
    AboveCutoff,

    /// <summary>The work a question may cost was done before the optimum was found.</summary>
    Stopped,
}
