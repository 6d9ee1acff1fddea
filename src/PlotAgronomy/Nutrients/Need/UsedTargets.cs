using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The targets that are used: ours, then the laboratory's printed figures, then what was set by hand.</summary>
internal sealed class UsedTargets(PlotNeedRequest request, ImmutableArray<NutrientTarget> ours, NitrogenOfBlend nitrogen)
{
    /// <summary>Remarks where the laboratory asks for much more or less than we do.</summary>
    internal IEnumerable<Finding> PrintedRemarks()
    {
        if (request.Printed is not { } printed)
        {
            yield break;
        }

        yield return FindingCatalog.Create(NutrientCodes.PrintedCrop, ("crop", printed.Crop));
        foreach (var rate in printed.Rates)
        {
            if (
                OurOwn(rate.Nutrient) is { } target
                && BlendNeedRule.Differ(target.AtLeast.PoundsPerAcre, rate.Low.PoundsPerAcre, rate.High.PoundsPerAcre)
            )
            {
                yield return FindingCatalog.Create(
                    NutrientCodes.PrintedDiffers,
                    ("printed", NutrientWords.Range(rate.Low, rate.High)),
                    ("nutrient", SoilWords.For(rate.Nutrient)),
                    ("system", Ours(rate.Nutrient)),
                    ("ours", Amounts.Print(target.AtLeast.PoundsPerAcre, 1))
                );
            }
        }
    }

    /// <summary>Remarks on what was set by hand, and what would have stood there.</summary>
    internal IEnumerable<Finding> OverrideRemarks() =>
        request.Overrides.Select(target =>
            FindingCatalog.Create(
                NutrientCodes.Override,
                ("nutrient", SoilWords.For(target.Nutrient)),
                ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1)),
                ("reason", target.Reason),
                (
                    "ours",
                    (request.Printed?.Find(target.Nutrient)?.Low ?? OurOwn(target.Nutrient)?.AtLeast) is { } before
                        ? $"{Amounts.Print(before.PoundsPerAcre, 1)} lb/ac"
                        : "nothing"
                )
            )
        );

    internal ImmutableArray<NutrientTarget> All()
    {
        var used = ours.ToDictionary(t => t.Nutrient);
        if (request.Printed is { } printed)
        {
            foreach (var rate in printed.Rates)
            {
                used[rate.Nutrient] = Printed(printed, rate);
            }
        }

        foreach (var target in request.Overrides)
        {
            used[target.Nutrient] = target;
        }

        return [.. used.Values.OrderBy(t => t.Nutrient)];
    }

    private NutrientTarget? OurOwn(PlantNutrient nutrient) => ours.FirstOrDefault(t => t.Nutrient == nutrient);

    private NutrientTarget Printed(PrintedRecommendation printed, PrintedRate rate) =>
        NutrientTarget.Create(rate.Nutrient, rate.Low, PrintedCeiling(rate), () =>
            $"Printed by {printed.Laboratory} for {printed.Crop}{Beside(OurOwn(rate.Nutrient))}."
        );

    /// <summary>A printed rate lifts neither the ceiling on phosphate that is not needed nor that on nitrogen for legumes, and a
    /// printed zero lifts none.</summary>
    private ApplicationRate? PrintedCeiling(PrintedRate rate)
    {
        if (rate.Nutrient == PlantNutrient.Nitrogen && (nitrogen.IsLegumesOnly || rate.High <= ApplicationRate.Zero))
        {
            double most = nitrogen.IsLegumesOnly ? rate.High.PoundsPerAcre : 0;
            var own = OurOwn(rate.Nutrient)?.AtMost;
            return ApplicationRate.FromPoundsPerAcre(
                Math.Max(most, Math.Min(own?.PoundsPerAcre ?? double.PositiveInfinity, BlendNeedRule.LegumeNitrogenCeilingPounds))
            );
        }

        return rate.High > rate.Low || BlendNeedRule.IsUnneededPhosphate(rate.Nutrient, rate.Low) ? rate.High
            : rate.High <= ApplicationRate.Zero ? OurOwn(rate.Nutrient)?.AtMost
            : null;
    }

    private string Beside(NutrientTarget? own) =>
        own is null ? "" : $"; {Ours(own.Nutrient)} would ask for {Amounts.Print(own.AtLeast.PoundsPerAcre, 1)} lb/ac";

    /// <summary>Who asks for our own figure.</summary>
    private string Ours(PlantNutrient nutrient) =>
        nutrient is PlantNutrient.Phosphate or PlantNutrient.Potash ? request.System?.Name ?? "the rule here" : "the rule here";
}
