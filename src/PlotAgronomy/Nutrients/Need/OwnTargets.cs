using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Our own targets: nitrogen by the shares, P and K by the most demanding kind, then the secondary nutrients.</summary>
internal sealed class OwnTargets(
    ImmutableArray<ComponentNeed> components,
    NitrogenOfBlend nitrogen,
    ImmutableArray<SecondaryAnswer> secondary
)
{
    private readonly ImmutableArray<ComponentNeed> counted = [.. components.Where(c => c.Counts)];

    internal ImmutableArray<NutrientTarget> All() =>
        [
            .. new[] { Nitrogen(), MostDemanding(PlantNutrient.Phosphate), MostDemanding(PlantNutrient.Potash) }
                .OfType<NutrientTarget>()
                .Concat(Secondary()),
        ];

    /// <summary>The remark that a sensitive kind holds the boron down; none where no boron is due.</summary>
    internal IEnumerable<Finding> Findings =>
        SensitiveKind is { } sensitive
        && secondary.Any(s => s.Rule.Nutrient == PlantNutrient.Boron && s.Low is not null && s.High > ApplicationRate.Zero)
            ?
            [
                FindingCatalog.Create(
                    NutrientCodes.BoronSensitiveKind,
                    ("kind", sensitive.Component.Kind.ShortName),
                    ("limit", Amounts.Print(CarefulBoron.PoundsPerAcre, 4))
                ),
            ]
            : [];

    private static ApplicationRate CarefulBoron =>
        ApplicationRate.FromPoundsPerAcre(SecondaryRule.PlotBoron.Rows[0].RateHigh!.Value);

    private ComponentNeed? SensitiveKind => components.FirstOrDefault(c => KindProxy.For(c.Component.Kind).IsSensitiveToBoron);

    private NutrientTarget? Nitrogen()
    {
        if (!nitrogen.IsAnswered)
        {
            return null;
        }

        var low = ApplicationRate.FromPoundsPerAcre(nitrogen.LowPounds);
        ApplicationRate? high =
            nitrogen.IsLegumesOnly || nitrogen.HighPounds <= 0
                ? ApplicationRate.FromPoundsPerAcre(BlendNeedRule.LegumeNitrogenCeilingPounds)
            : nitrogen.HighPounds > nitrogen.LowPounds ? ApplicationRate.FromPoundsPerAcre(nitrogen.HighPounds)
            : null;
        return NutrientTarget.Create(PlantNutrient.Nitrogen, low, high, () => nitrogen.Reason);
    }

    private NutrientTarget? MostDemanding(PlantNutrient nutrient)
    {
        if (
            counted.Where(c => c.For(nutrient) is not null).MaxBy(c => (c.For(nutrient)!.Rate, c.For(nutrient)!.PublishedHigh))
            is not { } leading
        )
        {
            return null;
        }

        var need = leading.For(nutrient)!;
        return need.IsLegalMaximum
            ? NutrientTarget.Create(nutrient, ApplicationRate.Zero, need.Rate, Reason)
            : NutrientTarget.Create(
                nutrient,
                need.Rate,
                BlendNeedRule.IsUnneededPhosphate(nutrient, need.Rate) ? need.PublishedHigh : null,
                Reason
            );

        string Reason()
        {
            string range =
                need.PublishedHigh > need.PublishedLow
                    ? $" The printed range is {NutrientWords.Range(need.PublishedLow, need.PublishedHigh)} lb/ac."
                    : "";
            return $"{need.Why} {RowRead(leading, nutrient)}{range}";
        }
    }

    /// <summary>Which row the figure stands in, and whose it is when the kinds differ.</summary>
    private string RowRead(ComponentNeed leading, PlantNutrient nutrient)
    {
        var row = leading.RowFor(nutrient)!.Value;
        if (CropRows.IsWildlifePlot(row))
        {
            return $"It is read from the wildlife plot row ({CropRows.WordsFor(row)}).";
        }

        bool differ = counted.Where(c => c.For(nutrient) is not null).Select(c => c.For(nutrient)!.Rate).Distinct().Count() > 1;
        string most = differ ? ", the most demanding of the kinds that count," : "";
        string nearest = KindProxy.For(leading.Component.Kind).IsOwn(row) ? "" : ", the nearest";
        return $"For {leading.Component.Kind.ShortName}{most} it is read from the row for {CropRows.WordsFor(row)}{nearest}.";
    }

    private IEnumerable<NutrientTarget> Secondary()
    {
        foreach (
            var group in secondary
                .Where(s => s is { Low: not null, High: not null })
                .GroupBy(s => s.Rule.Nutrient)
                .OrderBy(g => g.Key)
        )
        {
            var leading = group.MaxBy(s => s.High)!;
            var low = leading.Low!.Value;
            var high = leading.High!.Value;
            if (group.Key == PlantNutrient.Boron && high > ApplicationRate.Zero)
            {
                (low, high) = LimitBoron(low, high);
            }

            bool ceiling = group.Key == PlantNutrient.Boron || high > low;
            yield return NutrientTarget.Create(group.Key, low, ceiling ? high : null, () =>
                $"{leading.Rule.Title}: {leading.Reason}."
            );
        }
    }

    /// <summary>A sensitive kind in the blend sets the limit: the careful plot rate, whatever a single crop's rule
    /// allows.</summary>
    private (ApplicationRate Low, ApplicationRate High) LimitBoron(ApplicationRate low, ApplicationRate high)
    {
        if (SensitiveKind is null)
        {
            return (low, high);
        }

        var limit = CarefulBoron;
        return (low < limit ? low : limit, high < limit ? high : limit);
    }
}
