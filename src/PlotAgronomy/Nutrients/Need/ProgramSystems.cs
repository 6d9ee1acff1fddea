using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Which recommendation systems belong to which laboratory's program.</summary>
internal static class ProgramSystems
{
    private static readonly Lazy<FrozenDictionary<string, ImmutableArray<string>>> ById = Table.Keyed(
        "Nutrients/Data/program-systems.csv",
        r => r.Text("id"),
        r => r.List("system_ids")
    );

    /// <summary>The report's program when the system is not one of its own, else null.</summary>
    internal static SoilProgram? Foreign(SoilReport report, RecommendationSystem system) =>
        SoilProgram.Of(report) is { } program && !ById.Value.GetValueOrDefault(program.Name, []).Contains(system.Id)
            ? program
            : null;
}
