using PlotAgronomy.Liming;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What a plot needs from this date on: lime by its rate, and nutrients for one growing season.</summary>
/// <remarks>A need stands until a later entry states it anew: a zero ends it, leaving it out does not.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record NeedEntry : BookEntry
{
    internal const string Word = "need";

    /// <summary>Gets the lime that is due; null where none was asked about.</summary>
    public LimeRate? Lime { get; init; }

    /// <summary>Gets the nitrogen, N; null where it was not asked about.</summary>
    public ApplicationRate? Nitrogen { get; init; }

    /// <summary>Gets the phosphate, P2O5; null where it was not asked about.</summary>
    public ApplicationRate? Phosphate { get; init; }

    /// <summary>Gets the potash, K2O; null where it was not asked about.</summary>
    public ApplicationRate? Potash { get; init; }

    internal override string What => Word;

    internal ApplicationRate? Of(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => Nitrogen,
            PlantNutrient.Phosphate => Phosphate,
            PlantNutrient.Potash => Potash,
            _ => null,
        };

    internal override void Write(FieldWriter to)
    {
        to.Value<ApplicationRate>("lime", Lime?.OfBasis);
        to.Number("target-ph", Lime?.TargetPh);
        to.Quantity("depth", Lime?.Depth.Inches, "in");
        to.Text("basis", Lime?.Basis.Id);
        to.Text("institution", Lime?.Institution.Id);
        to.Value("n", Nitrogen);
        to.Value("p2o5", Phosphate);
        to.Value("k2o", Potash);
    }

    internal static NeedEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Lime = from.ValueOrNull<ApplicationRate>("lime") is { } rate ? Read(from, rate) : null,
            Nitrogen = from.ValueOrNull<ApplicationRate>("n"),
            Phosphate = from.ValueOrNull<ApplicationRate>("p2o5"),
            Potash = from.ValueOrNull<ApplicationRate>("k2o"),
        };

    private static LimeRate Read(FieldReader from, ApplicationRate rate)
    {
        double target = from.Number("target-ph");
        double depth = from.Quantity("depth", "in");
        string basis = from.Text("basis");
        string institution = from.Text("institution");
        return from.Try("lime", () =>
            LimeRate.FromBasis(
                rate,
                target,
                Length.FromInches(depth),
                LimeBasis.Find(basis),
                Institution.FindLaboratory(institution)
            )
        );
    }
}
