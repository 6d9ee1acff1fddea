using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The recommendation systems of this library. A system is asked by name; none is chosen in silence.</summary>
public static class RecommendationSystems
{
    private static readonly Catalog<RecommendationSystem> Catalog = new(
        "recommendation system",
        () => SystemRecord.All.Select(Make),
        s => s.Id,
        s => s.Status
    );

    /// <summary>Gets the systems whose numbers were all seen in print.</summary>
    public static ImmutableArray<RecommendationSystem> All => Catalog.All;

    /// <summary>Gets the systems with numbers from memory; such an answer is given only when asked for by name, with a
    /// finding.</summary>
    public static ImmutableArray<RecommendationSystem> Unchecked => Catalog.Unchecked;

    /// <summary>Gets North Carolina's index equations, with the wildlife rows.</summary>
    public static RecommendationSystem NorthCarolina => Find("NC");

    /// <summary>Gets South Carolina's crop grids.</summary>
    public static RecommendationSystem SouthCarolina => Find("SC");

    /// <summary>Gets the Tri-State recommendations of 2020.</summary>
    public static RecommendationSystem TriState2020 => Find("TS-2020");

    /// <summary>Gets the Tri-State recommendations of 1995, superseded.</summary>
    public static RecommendationSystem TriState1995 => Find("TS-1995");

    /// <summary>Gets Missouri's square-root build-up.</summary>
    public static RecommendationSystem Missouri => Find("MO");

    /// <summary>Gets Illinois' build-up and maintenance.</summary>
    public static RecommendationSystem Illinois => Find("IL");

    /// <summary>Gets Oklahoma's sufficiency table.</summary>
    public static RecommendationSystem Oklahoma => Find("OK");

    /// <summary>Gets Kansas' sufficiency equations of 2003.</summary>
    public static RecommendationSystem Kansas => Find("KS");

    /// <summary>Gets South Dakota's yield-goal equations.</summary>
    public static RecommendationSystem SouthDakota => Find("SD");

    /// <summary>Gets Iowa's class tables of 2013, superseded.</summary>
    public static RecommendationSystem Iowa2013 => Find("IA-2013");

    /// <summary>Gets Nebraska's critical levels: yes or no, without a rate.</summary>
    public static RecommendationSystem Nebraska => Find("NE");

    /// <summary>Gets Montana's phosphorus guide for alfalfa.</summary>
    public static RecommendationSystem Montana => Find("MT");

    /// <summary>Gets Northern Ireland's legal phosphate limits for grass.</summary>
    public static RecommendationSystem NorthernIreland => Find("NI");

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
    public static bool TryFind(string? id, [NotNullWhen(true)] out RecommendationSystem? system, out string problem) =>
        Catalog.TryFind(id, out system, out problem);

    private static RecommendationSystem Make(SystemRecord record)
    {
        Func<ImmutableArray<RecommendationSystem>> all = () => Everything;
        return record.Id switch
        {
            "NC" => new NorthCarolinaSystem(record) { Siblings = all },
            "SC" => new SouthCarolinaSystem(record) { Siblings = all },
            "TS-2020" => new TriState2020System(record) { Siblings = all },
            "TS-1995" => new TriState1995System(record) { Siblings = all },
            "MO" => new MissouriSystem(record) { Siblings = all },
            "IL" => new IllinoisSystem(record) { Siblings = all },
            "OK" => new OklahomaSystem(record) { Siblings = all },
            "NE" => new NebraskaSystem(record) { Siblings = all },
            "KS" or "SD" or "ND-2017" or "NE-OLD" => new LinearSystem(record) { Siblings = all },
            "IA-2013" or "MT" or "NI" => new ClassRateSystem(record) { Siblings = all },
            _ => throw new InvalidOperationException($"No class computes the system {record.Id}."),
        };
    }
}
