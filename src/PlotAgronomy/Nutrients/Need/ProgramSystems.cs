using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Which recommendation systems belong to which laboratory's program.</summary>
internal static class ProgramSystems
{
    private static readonly Lazy<FrozenDictionary<string, ImmutableArray<string>>> Table = new(() =>
        CsvTable
            .Embedded("Nutrients/Data/program-systems.csv", "id", "systems", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), r => r.List("systems"), StringComparer.Ordinal)
    );

    /// <summary>The report's program when the system is not one of its own, else null.</summary>
    internal static SoilProgram? Foreign(SoilReport report, RecommendationSystem system) =>
        SoilProgram.Of(report) is { } program && !Table.Value.GetValueOrDefault(program.Name, []).Contains(system.Id)
            ? program
            : null;
}
