using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <content>The recommendation systems of this library. A system is asked by name; none is chosen in silence.</content>
public abstract partial class RecommendationSystem
{
    private static readonly Catalog<RecommendationSystem> Catalog = new(
        "recommendation system",
        () => SystemRecord.All.Select(Make),
        s => s.Id,
        s => s.Status
    );

    private static readonly Lazy<IReadOnlyDictionary<string, RecommendationSystem>> ByProperty = new(() =>
        SystemRecord.All.Where(r => r.Property is not null).ToDictionary(r => r.Property!, r => Find(r.Id))
    );

    /// <summary>Gets the systems whose numbers were all seen in print.</summary>
    public static ImmutableArray<RecommendationSystem> All => Catalog.All;

    /// <summary>Gets the systems with numbers from memory; such an answer is given only when asked for by name, with a
    /// finding.</summary>
    public static ImmutableArray<RecommendationSystem> Unchecked => Catalog.Unchecked;

    /// <summary>Gets North Carolina's index equations, with the wildlife rows.</summary>
    public static RecommendationSystem NorthCarolina => Everyday();

    /// <summary>Gets the Tri-State recommendations of 1995, superseded.</summary>
    public static RecommendationSystem TriState1995 => Everyday();

    /// <summary>Gets Oklahoma's sufficiency table.</summary>
    public static RecommendationSystem Oklahoma => Everyday();

    /// <summary>Gets Kansas' sufficiency equations of 2003.</summary>
    public static RecommendationSystem Kansas => Everyday();

    internal static ImmutableArray<RecommendationSystem> Everything => Catalog.Everything;

    /// <summary>Finds a system by its id, checked or not.</summary>
    /// <param name="id">Id, such as <c>NC</c> or <c>TS-2020</c>.</param>
    /// <returns>The system.</returns>
    /// <exception cref="KeyNotFoundException">No system has this id; the message lists all.</exception>
    public static RecommendationSystem Find(string id) => Catalog.Find(id);

    /// <summary>Finds a system by its id, checked or not.</summary>
    /// <param name="id">Id, such as <c>NC</c> or <c>TS-2020</c>; may be null.</param>
    /// <param name="system">The system, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out RecommendationSystem? system, out string problem) =>
        Catalog.TryFind(id, out system, out problem);

    /// <summary>The system that the table gives a property of this name.</summary>
    private static RecommendationSystem Everyday([CallerMemberName] string property = "") => ByProperty.Value[property];

    private static RecommendationSystem Make(SystemRecord record)
    {
        Func<ImmutableArray<RecommendationSystem>> all = () => Everything;
        return record.Sum switch
        {
            SystemSum.IndexCurve => new NorthCarolinaSystem(record) { Siblings = all },
            SystemSum.RatingGrid => new SouthCarolinaSystem(record) { Siblings = all },
            SystemSum.CriticalLevelAndLimit => new TriState2020System(record) { Siblings = all },
            SystemSum.CriticalLevelAndTaper => new TriState1995System(record) { Siblings = all },
            SystemSum.SquareRootBuildUp => new MissouriSystem(record) { Siblings = all },
            SystemSum.GoalAndLimit => new IllinoisSystem(record) { Siblings = all },
            SystemSum.BetweenPoints => new OklahomaSystem(record) { Siblings = all },
            SystemSum.CriticalLevel => new NebraskaSystem(record) { Siblings = all },
            SystemSum.LinearEquation => new LinearSystem(record) { Siblings = all },
            SystemSum.ClassRate => new ClassRateSystem(record) { Siblings = all },
            _ => throw new InvalidOperationException($"No class computes the system {record.Id}."),
        };
    }
}
