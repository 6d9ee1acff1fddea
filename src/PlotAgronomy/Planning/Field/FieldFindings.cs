using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Where every finding of a plan is said: with the verdict, at its place in the work, to be watched, or behind.</summary>
/// <remarks>No warning is left behind: what has no place in this work is watched, however many there are.</remarks>
internal sealed class FieldFindings
{
    private const int MostWatched = 5;

    private readonly ILookup<WorkPlace?, Finding> placed;

    /// <param name="all">Every finding of the plan.</param>
    /// <param name="told">Those that the verdict says.</param>
    /// <param name="places">The places that this work has.</param>
    internal FieldFindings(IEnumerable<Finding> all, IEnumerable<Finding> told, ImmutableArray<WorkPlace> places)
    {
        placed = all.Except(told)
            .Where(f => f.Code != ReferenceCodes.FromMemory)
            .ToLookup(f => FindingPlaces.Of(f) is { } place && places.Contains(place) ? place : (WorkPlace?)null);
        var grave = Finding.InOrder(placed[null].Where(f => f.Severity > FindingSeverity.Note));
        int warnings = grave.Count(f => f.Severity == FindingSeverity.Warning);
        Watched = [.. grave.Take(Math.Max(MostWatched, warnings))];
        Behind = Finding.InOrder(placed[null].Except(Watched));
    }

    internal ImmutableArray<Finding> Watched { get; }

    internal ImmutableArray<Finding> Behind { get; }

    internal ImmutableArray<Finding> At(WorkPlace place) => Finding.InOrder(placed[place]);
}
