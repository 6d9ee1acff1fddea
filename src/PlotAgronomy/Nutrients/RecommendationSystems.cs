using System.Collections.Immutable;
using PlotAgronomy.Nutrients.Systems;

namespace PlotAgronomy.Nutrients;

/// <summary>The recommendation systems of this library. A system is asked by name; none is chosen in silence.</summary>
public static class RecommendationSystems
{
    private static readonly Lazy<ImmutableArray<RecommendationSystem>> Systems = new(() =>
    [
        new NorthCarolinaSystem(),
        new TriState2020System(),
    ]);

    /// <summary>Gets every system.</summary>
    public static ImmutableArray<RecommendationSystem> All => Systems.Value;

    /// <summary>Gets North Carolina's index equations, with the wildlife rows.</summary>
    public static RecommendationSystem NorthCarolina => Find("NC");

    /// <summary>Gets the Tri-State recommendations of 2020.</summary>
    public static RecommendationSystem TriState2020 => Find("TS-2020");

    /// <summary>Finds a system by its id.</summary>
    /// <param name="id">Id, such as <c>NC</c> or <c>TS-2020</c>.</param>
    /// <returns>The system.</returns>
    /// <exception cref="KeyNotFoundException">No system has this id.</exception>
    public static RecommendationSystem Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return All.FirstOrDefault(s => s.Id == id) ?? throw new KeyNotFoundException($"No recommendation system has the id '{id}'. Known: {string.Join(", ", All.Select(s => s.Id))}.");
    }
}
