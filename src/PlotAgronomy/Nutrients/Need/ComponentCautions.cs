using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Remarks on the kinds of a blend: what the system says of their rows, and what they are taken as.</summary>
internal static class ComponentCautions
{
    private static readonly ImmutableArray<PlantNutrient> SystemNutrients = [PlantNutrient.Phosphate, PlantNutrient.Potash];

    internal static IEnumerable<Finding> Of(PlotNeedRequest request, ImmutableArray<ComponentNeed> components) =>
        [
            .. ComponentNeeds.NoneCounts(request) ? [NoneCounts(request)] : Array.Empty<Finding>(),
            .. from component in components
            where component.Counts
            from nutrient in SystemNutrients
            from finding in component.AnswerFor(nutrient)?.FindingsOn(nutrient) ?? WithoutRow(request, component, nutrient)
            select finding,
            .. TakenAs(request, components),
        ];

    private static Finding NoneCounts(PlotNeedRequest request) =>
        FindingCatalog.Create(NutrientCodes.NoShareCounts, ("share", Amounts.Print(ComponentNeeds.CountedFrom(request), 4)));

    private static ImmutableArray<Finding> WithoutRow(PlotNeedRequest request, ComponentNeed component, PlantNutrient nutrient) =>
        request.System is { } system
            ?
            [
                FindingCatalog.Create(
                    NutrientCodes.KindWithoutRow,
                    ("system", system.Name),
                    ("kind", component.Component.Kind.ShortName),
                    ("nutrient", SoilWords.For(nutrient))
                ),
            ]
            : [];

    /// <summary>What stands in for a kind; where the next row would say much else it is asked.</summary>
    private static IEnumerable<Finding> TakenAs(PlotNeedRequest request, ImmutableArray<ComponentNeed> components)
    {
        StandIn[] standIns =
        [
            .. from component in components
            where component.Counts && ComponentNeeds.UseOf(request, component.Component.Kind).TakenAs is null
            from nutrient in SystemNutrients
            where component.RowFor(nutrient) is { } row && !KindProxy.For(component.Component.Kind).IsOwn(row)
            select StandIn.Of(request, component, nutrient),
        ];
        var asked = standIns.Where(s => s.Differs).Select(s => (s.Row, s.Kind)).ToHashSet();
        return standIns
            .Where(s => s.Differs)
            .GroupBy(s => (s.Row, s.Next, s.Nutrient, s.Pounds, s.NextPounds))
            .Select(g =>
                FindingCatalog.Create(
                    NutrientCodes.RowsDiffer,
                    ("system", request.System!.Name),
                    ("kind", string.Join("; ", g.Select(s => s.Kind))),
                    ("row", CropRows.WordsFor(g.Key.Row)),
                    ("nutrient", SoilWords.For(g.Key.Nutrient)),
                    ("rate", Amounts.Print(g.Key.Pounds!.Value, 0)),
                    ("other", CropRows.WordsFor(g.Key.Next!.Value)),
                    ("instead", Amounts.Print(g.Key.NextPounds!.Value, 0))
                )
            )
            .Concat(
                standIns
                    .Select(s => (s.Row, s.Kind))
                    .Distinct()
                    .Where(s => !asked.Contains(s))
                    .GroupBy(s => s.Row)
                    .Select(taken =>
                        FindingCatalog.Create(
                            NutrientCodes.TakenAs,
                            ("system", request.System!.Name),
                            ("kind", string.Join("; ", taken.Select(t => t.Kind))),
                            ("row", CropRows.WordsFor(taken.Key))
                        )
                    )
            );
    }
}
