using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>One nutrient of a mixture: each kind by its share of the stand, so that a trace of a hungry kind does not ask for a
/// field of it.</summary>
internal sealed class NeedByShare
{
    private readonly PlantNutrient nutrient;
    private readonly ImmutableArray<ComponentNeed> answered;
    private readonly double share;

    internal NeedByShare(ImmutableArray<ComponentNeed> components, PlantNutrient nutrient)
    {
        this.nutrient = nutrient;
        answered = [.. components.Where(c => c.For(nutrient) is not null)];
        share = answered.Sum(c => c.Component.ShareOfFullStand);
        double all = components.Sum(c => c.Component.ShareOfFullStand);
        IsKnown = share > 0 && share >= NutrientConstants.All["answered-share"] * all;
    }

    /// <summary>Whether kinds that fill enough of the stand have a figure; else the mixture has none.</summary>
    internal bool IsKnown { get; }

    internal bool IsLegalMaximum => answered.Any(c => Of(c).IsLegalMaximum);

    internal ApplicationRate Rate => Mean(n => n.Rate);

    internal ApplicationRate PublishedHigh => Mean(n => n.PublishedHigh);

    internal string Reason
    {
        get
        {
            var leading = answered.MaxBy(c => (Of(c).Rate, Of(c).PublishedHigh))!;
            return IsOneRate
                ? $"{Of(leading).Why} {RowRead(leading)}{Range(Of(leading))}"
                : $"By the shares of the stand: {Parts()}.";
        }
    }

    /// <summary>The mixture's rate from those of its kinds; none where they all ask for the same.</summary>
    internal IEnumerable<WorkedLine> Lines() =>
        IsKnown && !IsOneRate
            ?
            [
                NutrientFormulas
                    .All["need-by-share"]
                    .Line(
                        NutrientFormulas.PerAcre(Rate.PoundsPerAcre),
                        ("nutrient", SoilWords.For(nutrient)),
                        ("sum of need x share", NutrientFormulas.Number(Sum(n => n.Rate))),
                        ("sum of shares", NutrientFormulas.Number(share))
                    ),
            ]
            : [];

    private bool IsOneRate => answered.Length > 0 && answered.All(c => Of(c).Rate == Of(answered[0]).Rate);

    private NutrientNeed Of(ComponentNeed component) => component.For(nutrient)!;

    /// <summary>Where all kinds ask for the same it is that figure to the last digit.</summary>
    private ApplicationRate Mean(Func<NutrientNeed, ApplicationRate> figure) =>
        answered.Length > 0 && answered.All(c => figure(Of(c)) == figure(Of(answered[0])))
            ? figure(Of(answered[0]))
            : ApplicationRate.FromPoundsPerAcre(NitrogenMath.MeanByShare(Sum(figure), share));

    private double Sum(Func<NutrientNeed, ApplicationRate> figure) =>
        answered.Sum(c => figure(Of(c)).PoundsPerAcre * c.Component.ShareOfFullStand);

    /// <summary>What each group of kinds asks for, most demanding first.</summary>
    private string Parts() =>
        string.Join(
            "; ",
            answered
                .GroupBy(c => (Of(c).Rate, Row: c.RowFor(nutrient)!.Value))
                .OrderByDescending(g => g.Key.Rate)
                .Select(g =>
                    $"{Amounts.Print(g.Sum(c => c.Component.ShareOfFullStand), 2)} of a stand at "
                    + $"{Amounts.Print(g.Key.Rate.PoundsPerAcre, 1)} lb/ac (row for {CropRows.WordsFor(g.Key.Row)}: "
                    + $"{string.Join(", ", g.Select(c => c.Component.Kind.ShortName))})"
                )
        );

    private static string Range(NutrientNeed need) =>
        need.PublishedHigh > need.PublishedLow
            ? $" The printed range is {NutrientWords.Range(need.PublishedLow, need.PublishedHigh)} lb/ac."
            : "";

    /// <summary>Which row the figure stands in.</summary>
    private string RowRead(ComponentNeed leading)
    {
        var row = leading.RowFor(nutrient)!.Value;
        if (CropRows.IsWildlifePlot(row))
        {
            return $"It is read from the wildlife plot row ({CropRows.WordsFor(row)}).";
        }

        string nearest = KindProxy.For(leading.Component.Kind).IsOwn(row) ? "" : ", the nearest";
        return $"For {leading.Component.Kind.ShortName} it is read from the row for {CropRows.WordsFor(row)}{nearest}.";
    }
}
