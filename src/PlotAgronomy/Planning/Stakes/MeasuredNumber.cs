namespace PlotAgronomy.Planning;

/// <summary>A measured number of a plan with how far it may be off.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Reading">As the plan states it, with its unit.</param>
/// <param name="Error">How far it may be off, in the same unit.</param>
/// <param name="Origin">Who says so.</param>
internal abstract record MeasuredNumber(string Name, string Reading, string Error, Origin Origin)
{
    /// <summary>One that the plan is solved again with, as low and as high as it may be.</summary>
    internal sealed record InThePlan(string Name, string Reading, string Error, Origin Origin, PlotPlan Low, PlotPlan High)
        : MeasuredNumber(Name, Reading, Error, Origin);

    /// <summary>One by which the spreader was set: the plan stays, and another amount of seed falls.</summary>
    internal sealed record AtTheSpreader(
        string Name,
        string Reading,
        string Error,
        Origin Origin,
        double Least,
        double Most,
        Func<SowingPass, bool> Touches
    ) : MeasuredNumber(Name, Reading, Error, Origin);
}
