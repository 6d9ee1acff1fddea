using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A nutrient without a figure: said in one sentence, with the cheapest way to learn it.</summary>
internal sealed class NeedCure(
    PlotNeedRequest request,
    ImmutableArray<ComponentNeed> components,
    ImmutableArray<NutrientTarget> used
)
{
    /// <summary>Nitrogen, phosphate and potash that nobody gives a figure for; without kinds none is asked for.</summary>
    internal ImmutableArray<PlantNutrient> NotKnown =>
        [
            .. new[] { PlantNutrient.Nitrogen, PlantNutrient.Phosphate, PlantNutrient.Potash }.Where(n =>
                !request.Kinds.IsEmpty && used.All(t => t.Nutrient != n)
            ),
        ];

    internal IEnumerable<Finding> Findings => NotKnown.Select(Of);

    /// <summary>A fact that the user can tell costs nothing, another system's reading of the same test a call, a test
    /// money.</summary>
    internal Finding Of(PlantNutrient nutrient)
    {
        if (nutrient == PlantNutrient.Nitrogen)
        {
            return Fact(nutrient, "the nitrogen rule", "the yield hoped for, within its table");
        }

        if (request.System is not { } own)
        {
            return FindingCatalog.Create(
                request.Soil.Report.PrintsReadings ? NutrientCodes.NotKnownNoSystem : NutrientCodes.NotKnownNoReport,
                ("nutrient", SoilWords.For(nutrient))
            );
        }

        var silences = Silences(nutrient).ToList();
        return silences.Find(u => u.LacksFact) is { } lacking ? Fact(nutrient, own.Name, lacking.Reason)
            : ServedBy(nutrient) is { IsEmpty: false } others
                ? FindingCatalog.Create(
                    NutrientCodes.NotKnownSystem,
                    ("nutrient", SoilWords.For(nutrient)),
                    ("others", string.Join(" or ", others.Take(OpenQuestion.MostPlausible).Select(s => s.Name))),
                    ("laboratory", request.Soil.Report.Laboratory)
                )
            : FindingCatalog.Create(
                NutrientCodes.NotKnownTest,
                ("nutrient", SoilWords.For(nutrient)),
                ("laboratory", request.Soil.Report.Laboratory),
                (
                    "test",
                    silences.Exists(u => u.IsForSoil)
                        ? "its table for muck and peat"
                        : own.Accepts.FirstOrDefault(t => t.Nutrient == nutrient)?.ToString() ?? "another test"
                )
            );
    }

    /// <summary>The systems that would read the report's test for a kind that counts.</summary>
    internal ImmutableArray<RecommendationSystem> ServedBy(PlantNutrient nutrient) =>
        [.. Silences(nutrient).SelectMany(u => u.ServedBy).Concat(WithARow(nutrient)).Distinct()];

    /// <summary>The kinds that count, by their share and not by the order in which they were written down.</summary>
    private IEnumerable<ComponentNeed> Counting =>
        components
            .Where(c => c.Counts)
            .OrderByDescending(c => c.Component.ShareOfFullStand)
            .ThenBy(c => c.Component.Kind.Id, StringComparer.Ordinal);

    private IEnumerable<UnansweredNutrient> Silences(PlantNutrient nutrient) =>
        Counting.SelectMany(c => c.AnswerFor(nutrient)?.Unanswered ?? []).Where(u => u.Nutrient == nutrient);

    /// <summary>Where this system has no row for a kind: those that have one, and take the test.</summary>
    private IEnumerable<RecommendationSystem> WithARow(PlantNutrient nutrient) =>
        from component in Counting
        where component.RowFor(nutrient) is null
        from system in request.System?.Siblings() ?? []
        where
            KindProxy
                .For(component.Component.Kind)
                .RowIn(system, nutrient, ComponentNeeds.IsBrowsed(ComponentNeeds.UseOf(request, component.Component.Kind)))
                is { } row
            && system.WouldServe(request.Soil, row, nutrient)
        select system;

    private static Finding Fact(PlantNutrient nutrient, string system, string reason) =>
        FindingCatalog.Create(
            NutrientCodes.NotKnownFact,
            ("nutrient", SoilWords.For(nutrient)),
            ("system", system),
            ("reason", reason)
        );
}
