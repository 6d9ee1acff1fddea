using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Where every finding of a plan is said: with the verdict, at its place in the work, to be watched, or
/// behind.</summary>
/// <remarks>No warning is left behind: what has no place in this work is watched, however many there are. A caution that
/// belongs to one place is said behind where this work has no such place: its matter is not on the sheet.</remarks>
internal sealed class FieldFindings
{
    private readonly ImmutableArray<Placed> placed;
    private readonly ImmutableArray<Finding> grave;

    /// <param name="all">Every finding of the plan.</param>
    /// <param name="told">Those that the verdict says.</param>
    /// <param name="places">The places that this work has.</param>
    internal FieldFindings(IEnumerable<Finding> all, IEnumerable<Finding> told, ImmutableArray<WorkPlace> places)
    {
        placed =
        [
            .. all.Except(told)
                .Where(f => f.Code != ReferenceCodes.FromMemory)
                .Select(f => new Placed(f, PlaceOf(f, places))),
        ];
        grave = Joined(In(null).Where(f => f.Severity > FindingSeverity.Note));
    }

    /// <summary>What is watched at the least, so much room there is: every warning, and cautions up to a few.</summary>
    internal int LeastWatched => Math.Max(Warnings, Math.Min(grave.Length, Limit("least-watched")));

    private int Warnings => grave.Count(f => f.Severity == FindingSeverity.Warning);

    /// <param name="room">Lines that are left for it.</param>
    internal ImmutableArray<Finding> Watched(int room) =>
        [.. grave.Take(Math.Max(Warnings, Math.Min(room, Limit("most-watched"))))];

    /// <param name="watched">What is watched.</param>
    internal ImmutableArray<Finding> Behind(ImmutableArray<Finding> watched) =>
        [
            .. grave.Except(watched),
            .. At(WorkPlace.Behind),
            .. Joined(In(null).Where(f => f.Severity == FindingSeverity.Note)),
        ];

    private static WorkPlace? PlaceOf(Finding finding, ImmutableArray<WorkPlace> places) =>
        FindingPlaces.Of(finding) switch
        {
            WorkPlace.Behind when finding.Severity != FindingSeverity.Warning => WorkPlace.Behind,
            { } place when places.Contains(place) => place,
            { } when FindingPlaces.IsNamed(finding) && finding.Severity != FindingSeverity.Warning => WorkPlace.Behind,
            _ => null,
        };

    internal ImmutableArray<Finding> At(WorkPlace place) => Joined(In(place));

    private IEnumerable<Finding> In(WorkPlace? place) => placed.Where(p => p.Place == place).Select(p => p.Finding);

    internal static int Limit(string id) => (int)PlanningConstants.All[id];

    private static ImmutableArray<Finding> Joined(IEnumerable<Finding> findings) =>
        AlikeFindings.Joined(Finding.InOrder(findings));

    private sealed record Placed(Finding Finding, WorkPlace? Place);
}
