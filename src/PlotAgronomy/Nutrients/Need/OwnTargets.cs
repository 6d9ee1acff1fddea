using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Our own targets: nitrogen, P and K by the shares, then the secondary nutrients.</summary>
internal sealed class OwnTargets(
    ImmutableArray<ComponentNeed> components,
    NitrogenOfBlend nitrogen,
    ImmutableArray<SecondaryAnswer> secondary
)
{
    internal ImmutableArray<NutrientTarget> All() =>
        [
            .. new[] { Nitrogen(), ByShare(PlantNutrient.Phosphate), ByShare(PlantNutrient.Potash) }
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

    private ComponentNeed? SensitiveKind =>
        components
            .Where(c => KindProxy.For(c.Component.Kind).IsSensitiveToBoron)
            .MinBy(c => c.Component.Kind.Id, StringComparer.Ordinal);

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

    private NutrientTarget? ByShare(PlantNutrient nutrient)
    {
        var mixed = new NeedByShare(components, nutrient);
        if (!mixed.IsKnown)
        {
            return null;
        }

        var rate = mixed.Rate;
        return mixed.IsLegalMaximum
            ? NutrientTarget.Create(nutrient, ApplicationRate.Zero, rate, () => mixed.Reason)
            : NutrientTarget.Create(
                nutrient,
                rate,
                BlendNeedRule.IsUnneededPhosphate(nutrient, rate) ? mixed.PublishedHigh : null,
                () => mixed.Reason
            );
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
