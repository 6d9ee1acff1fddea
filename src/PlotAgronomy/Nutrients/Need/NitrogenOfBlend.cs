using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen of a blend: the non-legumes by their share of a full stand, less what a legume that grew there before
/// leaves.</summary>
internal sealed class NitrogenOfBlend
{
    private readonly PlotNeedRequest request;
    private readonly ImmutableArray<ComponentNeed> fed;
    private readonly double fedShare;
    private readonly double allShares;

    internal NitrogenOfBlend(PlotNeedRequest request, ImmutableArray<ComponentNeed> components)
    {
        this.request = request;
        fed =
        [
            .. components.Where(c =>
                !c.Component.Kind.IsLegume
                || !request.LegumesAreInoculated
                || ComponentNeeds.UseOf(request, c.Component.Kind).Nitrogen is not null
            ),
        ];
        fedShare = fed.Sum(c => c.Component.ShareOfFullStand);
        allShares = components.Sum(c => c.Component.ShareOfFullStand);
        var answered = fed.Where(c => c.Nitrogen.Low is not null).ToList();
        IsAnswered = components.Length > 0 && answered.Count == fed.Length;
        GrossLowPounds = answered.Sum(c => Part(c, c.Nitrogen.Low!.Value));
        GrossHighPounds = answered.Sum(c => Part(c, c.Nitrogen.High!.Value));
        CreditPounds = request.LegumeCredit?.Rate.PoundsPerAcre ?? 0;
        LowPounds = NitrogenMath.AfterCredit(GrossLowPounds, CreditPounds);
        HighPounds = NitrogenMath.AfterCredit(GrossHighPounds, CreditPounds);
        Leading = answered
            .Where(c => c.Nitrogen.High > ApplicationRate.Zero)
            .OrderByDescending(c => Part(c, c.Nitrogen.High!.Value))
            .ThenBy(c => c.Component.Kind.Id, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    /// <summary>Whether every non-legume's rule gave a figure; else the sum would be too low in silence.</summary>
    internal bool IsAnswered { get; }

    internal bool IsLegumesOnly => fed.IsEmpty && !request.Kinds.IsEmpty;

    internal double GrossLowPounds { get; }

    internal double GrossHighPounds { get; }

    internal double CreditPounds { get; }

    internal double LowPounds { get; }

    internal double HighPounds { get; }

    /// <summary>The kind with the largest part, of equal ones the first by its id; the dressings follow its rule.</summary>
    internal ComponentNeed? Leading { get; }

    internal IEnumerable<Finding> Findings =>
        [
            .. fed.SelectMany(c => c.Nitrogen.Findings).Where(f => f.Code != NutrientCodes.NitrogenSingleDose),
            .. request.LegumeCredit?.Findings ?? [],
            .. request.LegumesAreInoculated
                ? Array.Empty<Finding>()
                : [FindingCatalog.Create(NutrientCodes.NitrogenUninoculated)],
        ];

    internal IEnumerable<Source> Sources => fed.SelectMany(c => c.Nitrogen.Sources).Concat(request.LegumeCredit?.Sources ?? []);

    internal string Reason
    {
        get
        {
            if (IsLegumesOnly)
            {
                return "The legumes here make their own nitrogen, so none is spread; the limit only lets a phosphate bring a "
                    + "little along.";
            }

            string[] names = [.. fed.Select(c => c.Component.Kind.ShortName)];
            string listed = names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
            string share = Amounts.Print(fedShare, 2);
            string countedAsOne = fedShare > 1 ? ", counted as one" : "";
            string shares =
                Leading is { Nitrogen.Rule.IsForMixture: true } ? "the rule for a mixture with legumes"
                : names.Length == 1 ? $"its share of a full stand ({share})"
                : $"their shares of a full stand ({share} together{countedAsOne})";
            string legumes = fed.Length < request.Kinds.Length ? "; the legumes make their own" : "";
            string credit =
                CreditPounds > 0
                    ? $". Taken off are {Amounts.Print(CreditPounds, 4)} lb/ac left by {request.LegumeCredit!.Credit.Legume}"
                    : "";
            return $"Nitrogen for {listed}, by {shares}{legumes}{credit}.";
        }
    }

    /// <summary>A ceiling over a need of nothing is no dressing.</summary>
    internal static ApplicationRate SpreadAtMost(NutrientTarget target) =>
        target.AtLeast > ApplicationRate.Zero ? target.AtMost ?? target.AtLeast : target.AtLeast;

    internal ImmutableArray<NitrogenDose> Doses(NutrientTarget target) =>
        Leading is { } leading
            ? leading.Nitrogen.Rule.Split(target.AtLeast.PoundsPerAcre, SpreadAtMost(target).PoundsPerAcre)
            : [];

    internal IEnumerable<WorkedLine> Lines()
    {
        foreach (var component in fed.Where(c => c.Nitrogen.Low is not null))
        {
            var answer = component.Nitrogen;
            bool isForMixture = answer.Rule.IsForMixture;
            yield return NutrientFormulas
                .All[
                    isForMixture ? "nitrogen-of-mixture"
                    : fedShare > 1 ? "nitrogen-by-crowded-share"
                    : "nitrogen-by-share"
                ]
                .Line(
                    $"{NutrientWords.Range(Part(component, answer.Low!.Value), Part(component, answer.High!.Value))} lb/ac",
                    ("kind", component.Component.Kind.ShortName),
                    (isForMixture ? "N of the mixture" : "N alone", NutrientWords.Range(answer.Low.Value, answer.High.Value)),
                    ("share of a full stand", NutrientFormulas.Number(component.Component.ShareOfFullStand)),
                    (isForMixture ? "shares without legumes" : "shares together", NutrientFormulas.Number(fedShare)),
                    ("all shares", NutrientFormulas.Number(allShares))
                )
                .From(answer.Rule.Origin.FirstSource);
        }

        yield return NutrientFormulas
            .All["nitrogen-after-credit"]
            .Line(
                $"{NutrientWords.Range(LowPounds, HighPounds)} lb/ac",
                ("sum of the shares", NutrientWords.Range(GrossLowPounds, GrossHighPounds)),
                ("legume credit", NutrientFormulas.Number(CreditPounds))
            )
            .From(request.LegumeCredit?.Credit.Origin);
    }

    private double Part(ComponentNeed component, ApplicationRate alone) =>
        component.Nitrogen.Rule.IsForMixture
            ? NitrogenMath.OfMixture(alone.PoundsPerAcre, component.Component.ShareOfFullStand, fedShare, allShares)
            : NitrogenMath.ByShare(alone.PoundsPerAcre, component.Component.ShareOfFullStand, fedShare);
}
