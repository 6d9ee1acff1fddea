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
        }

        lines.AddRange(nitrogen.Lines().Select(line => (PlantNutrient.Nitrogen, line)));
        lines.AddRange(secondary.SelectMany(s => s.ShowWork().Select(line => (s.Rule.Nutrient, line))));
        lines.AddRange(
            used.Select(target =>
                (
                    target.Nutrient,
                    new WorkedLine(
                        $"Target {SoilWords.For(target.Nutrient)}",
                        target.Reason,
                        $"{Amounts.Print(target.AtLeast.PoundsPerAcre, 1)}{AtMost(target)} lb/ac"
                    )
                )
            )
        );
        return lines.ToImmutable();
    }

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

            string counts = component.Counts ? "counts" : "too small a share to count";
            yield return new WorkedLine(
                $"{SoilWords.For(nutrient)} for {component.Component.Kind.ShortName}",
                $"{request.System.Name}, row for {CropRows.WordsFor(row)}, "
                    + $"{Amounts.Print(component.Component.ShareOfFullStand, 4)} of a full stand ({counts})",
                $"{Amounts.Print(need.Rate.PoundsPerAcre, 1)} lb/ac",
                need.SourceIds.FirstOrDefault()
            );
        }
    }

    private static string AtMost(NutrientTarget target) =>
        target.AtMost is { } most ? $", at most {Amounts.Print(most.PoundsPerAcre, 1)}" : "";
}
