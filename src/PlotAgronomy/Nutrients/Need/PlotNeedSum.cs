using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>From a request to the need of a plot: ours first, then the laboratory's printed figures, then what was set by
/// hand.</summary>
internal sealed class PlotNeedSum
{
    internal PlotNeedSum(PlotNeedRequest request)
    {
        Request = request;
        Components = new ComponentNeeds(request).Run();
        Nitrogen = new NitrogenOfBlend(request, Components);
        Secondary =
        [
            .. request
                .SecondaryRules.Where(r => Components.Any(c => c.Counts && r.IsFor(c.Component.Kind)))
                .Select(r => r.Answer(request.Soil, request.IsLimeDue, request.TissueSulfur, request.MagnesiumSaturation)),
        ];
        Own = new OwnTargets(Components, Nitrogen, Secondary);
        Computed = Own.All();
        Choice = new UsedTargets(request, Computed, Nitrogen);
        Used = Choice.All();
        NitrogenTarget = Used.FirstOrDefault(t => t.Nutrient == PlantNutrient.Nitrogen);
        NitrogenDoses = NitrogenTarget is { } target ? Nitrogen.Doses(target) : [];
    }

    internal PlotNeedRequest Request { get; }

    internal ImmutableArray<ComponentNeed> Components { get; }

    internal NitrogenOfBlend Nitrogen { get; }

    internal ImmutableArray<SecondaryAnswer> Secondary { get; }

    internal OwnTargets Own { get; }

    /// <summary>Our own targets.</summary>
    internal ImmutableArray<NutrientTarget> Computed { get; }

    internal UsedTargets Choice { get; }

    internal ImmutableArray<NutrientTarget> Used { get; }

    internal NutrientTarget? NitrogenTarget { get; }

    internal ImmutableArray<NitrogenDose> NitrogenDoses { get; }

    internal NeedCure Cure => new(Request, Components, Used);

    /// <summary>What is needed and too little to buy; what was set by hand is bought.</summary>
    internal bool IsTooLittle(NutrientTarget target) =>
        PurchaseFloor.IsBelow(target) && Request.Overrides.All(o => o.Nutrient != target.Nutrient);

    internal NeedLines Lines => new(Request, Components, Nitrogen, Secondary);

    internal IEnumerable<Source> Sources =>
        [
            .. Nitrogen.Sources,
            .. Secondary.SelectMany(s => s.Sources),
            .. Components
                .Where(c => c.Counts)
                .SelectMany(c => new[] { c.Phosphate, c.Potash })
                .OfType<NutrientNeed>()
                .SelectMany(n => n.Sources),
        ];
}
