using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>How much ground what is there will do at the plan's shares and rates, what runs out first, and what is short for the
/// whole plot.</summary>
/// <remarks>Counted is what has a number of packages (<see cref="Offer{T}.Available"/>); of what has none there is no
/// end.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class UseUp
{
    private UseUp() { }

    /// <summary>Gets the plan.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets the kinds of which there is so much, the one that runs out first in front.</summary>
    public required ImmutableArray<UseUpLine> Seeds { get; init; }

    /// <summary>Gets lime and fertilizer of which there is so much, each alone, in the order of the offers.</summary>
    public required ImmutableArray<UseUpLine> Others { get; init; }

    /// <summary>Gets the ground that the seed plants at the wanted shares; null where no kind is counted.</summary>
    public Area? Plants => Seeds.IsEmpty ? null : Seeds[0].Ground;

    /// <summary>Gets what runs out first; null where no kind is counted.</summary>
    public UseUpLine? RunsOutFirst => Seeds.IsEmpty ? null : Seeds[0];

    /// <summary>What is there for a plan.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The answer; not needed where nothing on offer says how much there is of it, open where seed cannot be
    /// weighed.</returns>
    internal static Answer<UseUp> For(PlotPlan plan)
    {
        var counted = plan.Kinds.Where(k => OffersOf(plan, k.Kind).Any(o => o.Available is not null)).ToList();
        var others = Limes(plan).Concat(Fertilizers(plan)).ToImmutableArray();
        if (counted.Count == 0 && others.IsEmpty)
        {
            return Answers.NoneNeeded<UseUp>();
        }

        var untagged = counted.SelectMany(k => OffersOf(plan, k.Kind)).Where(o => o.Item.IsUntagged).ToList();
        ImmutableArray<OpenQuestion> open =
        [
            .. SeedParts.BeforeBlending(plan),
            .. untagged.Select(o => SeedQuestions.HomeTest(o.Item)),
        ];
        if (counted.Count > 0 && !open.IsEmpty)
        {
            return Answers.Open<UseUp>(() => open);
        }

        var lines = counted.Select(k => SeedLine(plan, k)).OrderBy(l => l.Ground.Acres).ToImmutableArray();
        return Answers.Given(
            new UseUp
            {
                Plan = plan,
                Seeds = lines.IsEmpty ? [] : [.. lines.Select(l => l.LeavingAt(lines[0].Ground))],
                Others = others,
            }
        );
    }

    private static UseUpLine SeedLine(PlotPlan plan, PlannedKind kind)
    {
        var living = SeedSolver.BlendOf(plan)!.PartOf(kind.Kind).LiveRate;
        var lots = OffersOf(plan, kind.Kind)
            .Where(o => o.Available is not null)
            .Select(o => (There: WeightOf(o), PerAcre: o.Item.BulkRate(living).Bulk.PoundsPerAcre))
            .ToList();
        double pounds = lots.Sum(l => l.There),
            acres = lots.Sum(l => l.There / l.PerAcre);

        // Lots of unlike strength count by the ground they plant: their common rate is what they weigh over that.
        double rate = acres > 0 ? pounds / acres : lots[0].PerAcre;
        return UseUpLine.For(kind.Kind.ShortName, pounds, rate, plan.Plot.Area);
    }

    /// <summary>Each lime as if there were no end of it, for what there is of another must not lower its rate.</summary>
    private static IEnumerable<UseUpLine> Limes(PlotPlan plan)
    {
        if (plan.LimeOffers.All(o => o.Available is null))
        {
            return [];
        }

        var endless = plan with { LimeOffers = [.. plan.LimeOffers.Select(o => o with { Available = null })] };
        var costs = endless.Solve().Lime.Told.Offers?.Costs ?? [];
        return from offer in plan.LimeOffers
               where offer.Available is not null
               from cost in costs
               where cost.Offer.Item == offer.Item && cost.Order is { ProductRate.PoundsPerAcre: > 0 }
               select UseUpLine.For(offer.Item.Name, WeightOf(offer), cost.Order!.ProductRate.PoundsPerAcre, plan.Plot.Area);
    }

    private static IEnumerable<UseUpLine> Fertilizers(PlotPlan plan)
    {
        if (plan.FertilizerOffers.All(o => o.Available is null))
        {
            return [];
        }

        var need = plan.Solve().Need.Told.WorthBuying;
        return plan
            .FertilizerOffers.Where(o => o.Available is not null)
            .Select(o => (Offer: o, Alone: SingleProductRate.MeetingAll(o.Item.Analysis, need)))
            .Where(o => o.Alone.Rate > ApplicationRate.Zero)
            .Select(o => UseUpLine.For(o.Offer.Item.Name, WeightOf(o.Offer), o.Alone.Rate.PoundsPerAcre, plan.Plot.Area));
    }

    private static IEnumerable<Offer<SeedLot>> OffersOf(PlotPlan plan, CropKind kind) =>
        plan.SeedOffers.Concat(plan.Kinds.Select(k => k.Offer)).Distinct().Where(o => o.Item.Kind.Id == kind.Id);

    private static double WeightOf<T>(Offer<T> offer)
        where T : class => offer.Available!.Value * offer.Package.Pounds;

    /// <summary>What it comes to.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        RunsOutFirst is { } first
            ? $"{Amounts.Print(first.Ground, "ac", 3)}, then {first.Name} runs out"
            : string.Join(", ", Others.Select(o => o.ToString()));
}
