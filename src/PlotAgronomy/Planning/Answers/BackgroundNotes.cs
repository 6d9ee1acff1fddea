using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Remarks that cannot change what is done: they belong to the working.</summary>
internal static class BackgroundNotes
{
    private static readonly Lazy<ILookup<string, Where>> Codes = Table.Grouped(
        "Planning/Data/background.csv",
        row => row.Text("code"),
        row => row.Choice<Where>("where")
    );

    private enum Where
    {
        Always,
        WorkedIn,
        BoronSaid,
    }

    internal static ImmutableArray<Finding> Of(ImmutableArray<Finding> findings, PlotPlan plan) =>
        [.. findings.Where(f => Codes.Value[f.Code].Any(w => Holds(w, findings, plan)))];

    private static bool Holds(Where where, ImmutableArray<Finding> findings, PlotPlan plan) =>
        where switch
        {
            Where.Always => true,
            Where.WorkedIn => plan.Method == PlantingMethod.TilledAndPacked,
            _ => findings.Any(f => f.Code == NutrientCodes.BoronToxicity),
        };

    internal static IEnumerable<string> AllCodes => Codes.Value.Select(c => c.Key);
}
