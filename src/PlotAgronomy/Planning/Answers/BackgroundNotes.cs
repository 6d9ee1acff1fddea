using System.Collections.Immutable;
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
    }

    internal static ImmutableArray<Finding> Of(ImmutableArray<Finding> findings, PlotPlan plan) =>
        [
            .. findings.Where(f =>
                Codes.Value[f.Code].Any(w => w == Where.Always || plan.Method == PlantingMethod.TilledAndPacked)
            ),
        ];

    internal static IEnumerable<string> AllCodes => Codes.Value.Select(c => c.Key);
}
