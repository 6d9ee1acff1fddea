using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>The recommendation systems of this library. A system is asked by name; none is chosen in silence.</summary>
public static class RecommendationSystems
{
    private static readonly Lazy<ImmutableArray<RecommendationSystem>> Systems = new(() => Make(() => All));

    /// <summary>Gets every system.</summary>
    public static ImmutableArray<RecommendationSystem> All => Systems.Value;

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

    /// <summary>Gets North Dakota's yield-goal equations, dropped in 2018.</summary>
    public static RecommendationSystem NorthDakotaBefore2018 => Find("ND-2017");

    /// <summary>Gets Iowa's class tables of 2013, superseded.</summary>
    public static RecommendationSystem Iowa2013 => Find("IA-2013");

    /// <summary>Gets Nebraska's critical levels: yes or no, without a rate.</summary>
    public static RecommendationSystem Nebraska => Find("NE");

    /// <summary>Gets Nebraska's older corn equations.</summary>
    public static RecommendationSystem NebraskaOlder => Find("NE-OLD");

    /// <summary>Gets Montana's phosphorus guide for alfalfa.</summary>
    public static RecommendationSystem Montana => Find("MT");

    /// <summary>Gets Northern Ireland's legal phosphate limits for grass.</summary>
    public static RecommendationSystem NorthernIreland => Find("NI");

    /// <summary>Finds a system by its id.</summary>
    /// <param name="id">Id, such as <c>NC</c> or <c>TS-2020</c>.</param>
    /// <returns>The system.</returns>
    /// <exception cref="KeyNotFoundException">No system has this id.</exception>
    public static RecommendationSystem Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return All.FirstOrDefault(s => s.Id == id)
            ?? throw new KeyNotFoundException(
                $"No recommendation system has the id '{id}'. Known: {string.Join(", ", All.Select(s => s.Id))}."
            );
    }

    private static ImmutableArray<RecommendationSystem> Make(Func<ImmutableArray<RecommendationSystem>> all) =>
        [
            new NorthCarolinaSystem() { Siblings = all },
            new SouthCarolinaSystem() { Siblings = all },
            new TriState2020System() { Siblings = all },
            new TriState1995System() { Siblings = all },
            new MissouriSystem() { Siblings = all },
            new IllinoisSystem() { Siblings = all },
            new OklahomaSystem() { Siblings = all },
            new LinearSystem("KS") { Siblings = all },
            new LinearSystem("SD") { Siblings = all },
            new LinearSystem("ND-2017") { Siblings = all },
            new ClassRateSystem("IA-2013") { Siblings = all },
            new NebraskaSystem() { Siblings = all },
            new LinearSystem("NE-OLD") { Siblings = all },
            new ClassRateSystem("MT") { Siblings = all },
            new ClassRateSystem("NI") { Siblings = all },
        ];
}
