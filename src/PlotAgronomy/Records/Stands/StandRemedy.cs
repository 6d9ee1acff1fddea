using System.Collections.Immutable;
using PlotAgronomy.Calendar;

namespace PlotAgronomy.Records;

/// <summary>What may still be sown into a stand that is thin, or in place of one that failed.</summary>
/// <param name="Stand">The stand.</param>
/// <param name="On">Day that is held against the printed dates and the frost.</param>
/// <param name="InTime">Kinds that are in time on that day, those of the plan first; none where nothing is.</param>
/// <param name="IsPlaceKnown">Whether the region of the plot is known: without it no date can be held against anything.</param>
internal sealed record StandRemedy(StandOutcome Stand, DateOnly On, ImmutableArray<KindDates> InTime, bool IsPlaceKnown);
