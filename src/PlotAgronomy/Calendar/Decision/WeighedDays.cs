using System.Collections.Immutable;

namespace PlotAgronomy.Calendar;

/// <summary>The days of a forecast, weighed.</summary>
/// <param name="Days">The days, in order.</param>
/// <param name="Remarks">What was taken for a fact that is not known.</param>
internal sealed record WeighedDays(ImmutableArray<DecisionDay> Days, ImmutableArray<Finding> Remarks);
