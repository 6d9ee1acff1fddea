using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Which recommendation systems belong to which laboratory's program.</summary>
internal static class ProgramSystems
{
    private static readonly Lazy<IReadOnlyDictionary<Institution, ImmutableArray<string>>> ByInstitution = Table.Keyed(
        "Nutrients/Data/program-systems.csv",
        r => r.Institution(),
        r => r.List("system_ids")
    );

    internal static ImmutableArray<string> IdsOf(Institution institution) =>
        ByInstitution.Value.GetValueOrDefault(institution, []);

    /// <summary>The report's program when the system is not one of its own, else null.</summary>
    internal static SoilProgram? Foreign(SoilReport report, RecommendationSystem system) =>
        SoilProgram.For(report) is { } program && !IdsOf(program.Institution).Contains(system.Id) ? program : null;
}
