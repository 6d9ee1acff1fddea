using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The working of a plot's need, nutrient by nutrient.</summary>
internal sealed class NeedLines(
    PlotNeedRequest request,
    ImmutableArray<ComponentNeed> components,
    NitrogenOfBlend nitrogen,
    ImmutableArray<SecondaryAnswer> secondary
)
{
    internal ImmutableArray<(PlantNutrient Nutrient, WorkedLine Line)> For(ImmutableArray<NutrientTarget> used)
    {
        var lines = ImmutableArray.CreateBuilder<(PlantNutrient, WorkedLine)>();
        foreach (var nutrient in new[] { PlantNutrient.Phosphate, PlantNutrient.Potash })
        {
            lines.AddRange(ComponentLines(nutrient).Select(line => (nutrient, line)));
            lines.AddRange(new NeedByShare(components, nutrient).Lines().Select(line => (nutrient, line)));
        }

        lines.AddRange(nitrogen.Lines().Select(line => (PlantNutrient.Nitrogen, line)));
        lines.AddRange(secondary.SelectMany(s => s.ShowWork().Select(line => (s.Rule.Nutrient, line))));
        lines.AddRange(used.Select(target => (target.Nutrient, LineOf(target))));
        return lines.ToImmutable();
    }

    /// <summary>What is to be spread of a nutrient, and why.</summary>
    internal static WorkedLine LineOf(NutrientTarget target) =>
        NutrientFormulas
            .All["target"]
            .Line(
                $"{Amounts.Print(target.AtLeast.PoundsPerAcre, 1)}{AtMost(target)} lb/ac: {target.Reason}",
                ("nutrient", SoilWords.For(target.Nutrient))
            );

    /// <summary>The system's own sum once for each row it was read from, then what each kind asks.</summary>
    private IEnumerable<WorkedLine> ComponentLines(PlantNutrient nutrient)
    {
        var shown = new HashSet<CropRow>();
        foreach (var component in components)
        {
            if (component.For(nutrient) is not { } need || component.RowFor(nutrient) is not { } row)
            {
                continue;
            }

            foreach (var line in shown.Add(row) ? need.Work() : [])
            {
                yield return line;
            }

            yield return NutrientFormulas
                .All["need-of-kind"]
                .Line(
                    $"{Amounts.Print(need.Rate.PoundsPerAcre, 1)} lb/ac by {request.System!.Name}, row for "
                        + $"{CropRows.WordsFor(row)}, {NutrientFormulas.Number(component.Component.ShareOfFullStand)} of a "
                        + "full stand",
                    ("nutrient", SoilWords.For(nutrient)),
                    ("kind", component.Component.Kind.ShortName)
                )
                .From(need.Origin);
        }
    }

    private static string AtMost(NutrientTarget target) =>
        target.AtMost is { } most ? $", at most {Amounts.Print(most.PoundsPerAcre, 1)}" : "";
}
