namespace PlotAgronomy.Nutrients;

/// <summary>A kind taken as a row that was not made for it, and what the next row of the system would say.</summary>
internal sealed record StandIn(
    string Kind,
    PlantNutrient Nutrient,
    CropRow Row,
    double? Pounds,
    CropRow? Next,
    double? NextPounds
)
{
    /// <summary>Whether the two rows lie so far apart that the choice decides what is bought.</summary>
    internal bool Differs =>
        Pounds is { } rate
        && NextPounds is { } other
        && Math.Abs(rate - other) >= PurchaseFloor.PoundsOf(Nutrient)
        && Math.Abs(rate - other) > NutrientConstants.All["rows-differ-share"] * Math.Max(rate, other);

    internal static StandIn Of(PlotNeedRequest request, ComponentNeed component, PlantNutrient nutrient)
    {
        var kind = component.Component.Kind;
        var use = ComponentNeeds.UseOf(request, kind);
        var row = component.RowFor(nutrient)!.Value;
        CropRow? next = null;
        foreach (var candidate in KindProxy.For(kind).RowsIn(request.System!, nutrient, ComponentNeeds.IsBrowsed(use)))
        {
            if (candidate != row)
            {
                next = candidate;
                break;
            }
        }

        var other = next is null ? null : new ComponentNeeds(request).Answer(next, use)?.For(nutrient);
        return new(
            kind.ShortName,
            nutrient,
            row,
            component.For(nutrient)?.Rate.PoundsPerAcre,
            other is null ? null : next,
            other?.Rate.PoundsPerAcre
        );
    }
}
