using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The targets that are used: ours, then the laboratory's printed figures, then what was set by hand.</summary>
internal sealed class UsedTargets(
    PlotNeedRequest request,
    ImmutableArray<NutrientTarget> ours,
    NitrogenOfBlend nitrogen,
    List<Finding> findings
)
{
    /// <summary>Remarks where the laboratory asks for much more or less than we do.</summary>
    internal void ComparePrinted()
    {
        if (request.Printed is not { } printed)
        {
            return;
        }

        findings.Add(FindingCatalog.Create(NutrientCodes.PrintedCrop, ("crop", printed.Crop)));
        foreach (var rate in printed.Rates)
        {
            if (
                ours.FirstOrDefault(t => t.Nutrient == rate.Nutrient) is { } target
                && BlendNeedRule.Differ(target.AtLeast.PoundsPerAcre, rate.Low.PoundsPerAcre, rate.High.PoundsPerAcre)
            )
            {
                findings.Add(
                    FindingCatalog.Create(
                        NutrientCodes.PrintedDiffers,
                        ("printed", NutrientWords.Range(rate.Low, rate.High)),
                        ("nutrient", SoilWords.For(rate.Nutrient)),
                        ("system", Ours(rate.Nutrient)),
                        ("ours", Amounts.Print(target.AtLeast.PoundsPerAcre, 1))
                    )
                );
            }
        }
    }

    internal ImmutableArray<NutrientTarget> All()
    {
        var used = ours.ToDictionary(t => t.Nutrient);
        foreach (var rate in request.Printed?.Rates ?? [])
        {
            string beside = Beside(ours.FirstOrDefault(t => t.Nutrient == rate.Nutrient));
            used[rate.Nutrient] = NutrientTarget.Create(
                rate.Nutrient,
                rate.Low,
                PrintedCeiling(rate),
                $"Printed by {request.Printed!.Laboratory} for {request.Printed.Crop}{beside}."
            );
        }

        foreach (var target in request.Overrides)
        {
            string before = used.TryGetValue(target.Nutrient, out var replaced)
                ? $"{Amounts.Print(replaced.AtLeast.PoundsPerAcre, 1)} lb/ac"
                : "nothing";
            findings.Add(
                FindingCatalog.Create(
                    NutrientCodes.Override,
                    ("nutrient", SoilWords.For(target.Nutrient)),
                    ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1)),
                    ("reason", target.Reason),
                    ("ours", before)
                )
            );
            used[target.Nutrient] = target;
        }

        return [.. used.Values.OrderBy(t => t.Nutrient)];
    }

    /// <summary>A printed rate lifts neither the ceiling on phosphate that is not needed nor that on nitrogen for
    /// legumes.</summary>
    private ApplicationRate? PrintedCeiling(PrintedRate rate)
    {
        if (rate.Nutrient == PlantNutrient.Nitrogen && nitrogen.IsLegumesOnly)
        {
            return ApplicationRate.FromPoundsPerAcre(
                Math.Max(rate.High.PoundsPerAcre, BlendNeedRule.LegumeNitrogenCeilingPounds)
            );
        }

        return rate.High > rate.Low || BlendNeedRule.IsUnneededPhosphate(rate.Nutrient, rate.Low) ? rate.High : null;
    }

    private string Beside(NutrientTarget? own) =>
        own is null ? "" : $"; {Ours(own.Nutrient)} would ask for {Amounts.Print(own.AtLeast.PoundsPerAcre, 1)} lb/ac";

    /// <summary>Who asks for our own figure.</summary>
    private string Ours(PlantNutrient nutrient) =>
        nutrient is PlantNutrient.Phosphate or PlantNutrient.Potash ? request.System.Name : "the rule here";
}
